import { refuse } from "./guards.js";
import { plainCopy } from "./plainCopy.js";
import { plainText } from "./text.js";

/** Returns a copy of plain JSON data, which storage keeps whole; refuses anything else. */
export function plainData<Data>(at: string, value: Data): Data {
  const copy = plainCopy(value);
  if (copy === undefined) refuse(at, "plain-data", plainText, {}, value);
  return copy as Data;
}
