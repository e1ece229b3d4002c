import { refuse } from "./guards.js";
import { plainCopy } from "./plainCopy.js";
import { plainText } from "./text.js";

/** Returns a copy of plain JSON data, which storage keeps whole; refuses anything else where it stands. */
export function plainData<Data>(at: string, value: Data): Data {
  const copy = plainCopy(value, ({ path, actual }) => refuse(at + path, "plain-data", plainText, {}, actual));
  return copy as Data;
}
