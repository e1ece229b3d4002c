/** How long a freshly stirred bath stands until its bubbles are gone, s: 5 to 10 min, common practice. */
export const REST_S: { readonly least: number; readonly most: number } = { least: 300, most: 600 };
