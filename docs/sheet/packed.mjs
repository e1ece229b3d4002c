/*
 * The page's script as it stands in the page: packed, so that a phone has less to read before it paints.
 */
import { gunzipSync, gzipSync } from "node:zlib";

/** A script as base64 of its gzip. */
export const packed = (code) => gzipSync(code, { level: 9 }).toString("base64");

/** The page with its script in plain text. */
export const unpacked = (html) =>
  html.replace(/(?<=<script type="text\/plain" id="code">)[^<]*/, (code) =>
    gunzipSync(Buffer.from(code, "base64")).toString(),
  );
