import { refuse } from "./guards.js";
import { plainCopy, type NotPlain } from "./plainCopy.js";
import { plainText } from "./text.js";

/**
 * Returns a copy of plain JSON data, of at most `most` values, which storage keeps whole; refuses anything
 * else where it stands.
 */
export function plainData<Data>(at: string, value: Data, most?: number): Data {
  const refused = ({ path, actual }: NotPlain): never =>
    refuse(at + path, "plain-data", plainText, {}, actual);
  return plainCopy(value, refused, most) as Data;
}
