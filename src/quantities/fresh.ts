/** Whether text says of a bath that it was just mixed, and that nothing was developed in it yet. */
export const isFresh = (text: string): boolean =>
  /^(?:fresh(?:ly mixed)?|new|unused|none|frisch|neu|unbenutzt|keine?)$/i.test(text.trim());
