/*
 * Elements in a few lines. The same code runs in a browser and, when the page is built, over a document
 * without a browser.
 */

/** What an element may be given: text as attributes, functions as listeners, `true` for a bare attribute. */
export type Attributes = Readonly<Record<string, string | number | boolean | ((event: never) => void)>>;

/** What may stand in an element; nothing leaves no trace. */
export type Child = Node | string | undefined | false;

function filled<Made extends Element>(made: Made, attributes: Attributes, children: readonly Child[]): Made {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") made.addEventListener(name, value as EventListener);
    else attribute(made, name, value);
  }
  put(made, children);
  return made;
}

/** An HTML element with attributes, listeners and children. */
export const el = <Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Name] => filled(document.createElement(name), attributes, children);

/** Sets, changes or takes away one attribute; leaves it alone when it is the same. */
export function attribute(
  element: Element,
  name: string,
  value: string | number | boolean | undefined,
): void {
  const wanted = value === false || value === undefined ? null : value === true ? "" : String(value);
  if (element.getAttribute(name) === wanted) return;
  if (wanted === null) element.removeAttribute(name);
  else element.setAttribute(name, wanted);
}

/** Puts these children in the place of all others. */
export function put(element: Element, children: readonly Child[]): void {
  element.replaceChildren(...children.filter((child) => child !== undefined && child !== false));
}

/** Changes a text only when it is another, so that nothing is read aloud twice. */
export function say(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** A large button. */
export const button = (text: string, press: () => void, attributes: Attributes = {}): HTMLButtonElement =>
  el("button", { type: "button", click: press, ...attributes }, text);
