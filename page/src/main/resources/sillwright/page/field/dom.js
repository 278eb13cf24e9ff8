// Making elements. No markup text anywhere: what people typed can never become part of the page's own code.

const SVG = 'http://www.w3.org/2000/svg';

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else if (name === 'value') element.value = value;
    else element.setAttribute(name, value === true ? '' : value);
  }
  for (const child of children.flat(3)) if (child !== null && child !== undefined && child !== false) element.append(child);
  return element;
}

/** An element: h('button', {onclick}, 'words'). */
export const h = (tag, attributes, ...children) => fill(document.createElement(tag), attributes, children);

/** The same in a drawing. */
export const s = (tag, attributes, ...children) => fill(document.createElementNS(SVG, tag), attributes, children);

/** A large button; `key` finds it again, and its focus, when the screen is drawn anew. */
export const button = (key, words, onclick, more = {}) => h('button', {type: 'button', 'data-key': key, onclick, ...more}, words);

/** A row of choices of which one holds. */
export const choices = (key, label, all, held, choose, more = {}) => h('div', {class: 'choices ' + (more.class ?? ''), role: 'group', 'aria-label': label},
  all.map(([value, words]) => button(`${key}-${value}`, words, () => choose(value), {'aria-pressed': String(value === held)})));

export const point = (svg, event) => {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return {x: at.x, y: at.y};
};
