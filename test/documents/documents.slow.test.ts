import { documentsAreAdmitted } from "./documents.js";

documentsAreAdmitted(10_000);
