import { describe, expect, it } from 'vitest';
import { safeSvg } from './safe_svg';

const svg = (inside: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 10">${inside}</svg>`;
const cleaned = (inside: string) => safeSvg(svg(inside))?.innerHTML ?? 'refused';

describe('a picture of the engine', () => {
  it('keeps its drawing, its words and its colours', () => {
    const picture = safeSvg(
      svg('<g fill="var(--stone-2)"><path d="M0 0L1 1"/><text x="1">D50 &lt; 12 in</text></g>'),
    );
    expect(picture?.querySelector('path')?.getAttribute('d')).toBe('M0 0L1 1');
    expect(picture?.querySelector('g')?.getAttribute('fill')).toBe('var(--stone-2)');
    expect(picture?.querySelector('text')?.textContent).toBe('D50 < 12 in');
    expect(picture?.ownerDocument).toBe(document);
  });

  it('keeps references inside itself', () => {
    expect(cleaned('<use href="#stone"/><rect clip-path="url(#water)"/>')).toContain(
      'href="#stone"',
    );
    expect(cleaned('<rect clip-path="url(#water)"/>')).toContain('url(#water)');
  });

  it.each([
    ['a script', '<script>alert(1)</script>'],
    ['a script in a group', '<g><script>alert(1)</script></g>'],
    [
      'embedded HTML',
      '<foreignObject><p xmlns="http://www.w3.org/1999/xhtml">x</p></foreignObject>',
    ],
    ['an HTML element', '<iframe xmlns="http://www.w3.org/1999/xhtml" src="x"/>'],
    ['an image', '<image href="http://elsewhere.example/x.png"/>'],
    ['an animation that sets a link', '<set attributeName="href" to="javascript:alert(1)"/>'],
    ['a style sheet', '<style>* { background: red }</style>'],
    ['a link', '<a href="#x"><text>x</text></a>'],
    ['a comment', '<!-- x -->'],
  ])('loses %s', (_what, inside) => {
    expect(cleaned(inside)).not.toMatch(
      /script|alert|foreignObject|iframe|image|<set|<style|<a |<!--/,
    );
  });

  it.each([
    ['a handler', '<rect onclick="alert(1)"/>', 'onclick'],
    ['a handler in capitals', '<rect ONLOAD="alert(1)"/>', 'ONLOAD'],
    ['a script as reference', '<use href="javascript:alert(1)"/>', 'href'],
    ['a reference elsewhere', '<use xlink:href="http://elsewhere.example/#x"/>', 'href'],
    ['a fetched paint', '<rect fill="url(http://elsewhere.example/#x)"/>', 'fill'],
    [
      'a fetched paint with an escape',
      '<rect style="fill:u\\72l(http://elsewhere.example/)"/>',
      'style',
    ],
  ])('loses %s', (_what, inside, attribute) => {
    expect(cleaned(inside)).not.toContain(attribute);
  });

  it('also loses handlers of its outermost element', () => {
    const root = safeSvg('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>');
    expect(root?.hasAttribute('onload')).toBe(false);
  });

  it.each([
    ['no XML', 'not a picture'],
    ['broken XML', '<svg xmlns="http://www.w3.org/2000/svg"><g></svg>'],
    ['HTML', '<p>x</p>'],
    ['an element that only looks like a picture', '<svg><rect/></svg>'],
    ['an empty text', ''],
  ])('is refused when it is %s', (_what, text) => {
    expect(safeSvg(text)).toBeUndefined();
  });
});
