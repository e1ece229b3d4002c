import { valuesAreStored } from "./values.js";

valuesAreStored(10);
