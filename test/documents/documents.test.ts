import { documentsAreAdmitted } from "./documents.js";

documentsAreAdmitted(300);
