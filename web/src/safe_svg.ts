/** Makes a picture of the engine safe to place in the page: drawing elements only, nothing active. */

const svgNamespace = 'http://www.w3.org/2000/svg';

const drawingElements = new Set([
  'svg',
  'g',
  'path',
  'line',
  'polyline',
  'polygon',
  'rect',
  'circle',
  'ellipse',
  'text',
  'tspan',
  'textPath',
  'title',
  'desc',
  'defs',
  'clipPath',
  'mask',
  'pattern',
  'marker',
  'linearGradient',
  'radialGradient',
  'stop',
  'use',
  'symbol',
]);

/** A value that would fetch something, or hide that it does. Local references (#…) are fine. */
const reachesOut = /url\(\s*(?!["']?#)|@import|expression\(|image-set\(|\\|javascript:|data:/i;

function isSafeAttribute(attribute: Attr): boolean {
  const name = attribute.localName.toLowerCase();
  if (name.startsWith('on')) return false;
  if (name === 'href') return attribute.value.trim().startsWith('#');
  return !reachesOut.test(attribute.value);
}

function clean(element: Element): void {
  for (const attribute of [...element.attributes]) {
    if (!isSafeAttribute(attribute)) element.removeAttributeNode(attribute);
  }
  for (const child of [...element.childNodes]) {
    if (child.nodeType === Node.TEXT_NODE) continue;
    const kept =
      child.nodeType === Node.ELEMENT_NODE &&
      (child as Element).namespaceURI === svgNamespace &&
      drawingElements.has((child as Element).localName);
    if (kept) clean(child as Element);
    else child.remove();
  }
}

/** The cleaned picture as an element of this page, or nothing where the text is no SVG. */
export function safeSvg(text: string): SVGSVGElement | undefined {
  const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
  const root = parsed.documentElement;
  if (root.namespaceURI !== svgNamespace || root.localName !== 'svg') return undefined;
  if (parsed.getElementsByTagName('parsererror').length > 0) return undefined;
  clean(root);
  return document.importNode(root, true) as unknown as SVGSVGElement;
}
