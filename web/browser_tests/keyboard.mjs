// A user who has a keyboard and no pointer: goes by Tab, sees where the focus is, and reads in its order.
import assert from 'node:assert/strict';

const mostSteps = 120;

/** What has the focus: its name, and how it can be seen that it has it. */
function focused(page) {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return undefined;
    const labelled = element.getAttribute('aria-labelledby');
    const name =
      element.getAttribute('aria-label') ??
      (labelled && document.getElementById(labelled)?.textContent) ??
      element.labels?.[0]?.textContent ??
      element.textContent;
    // The ring may be drawn by what stands for the control.
    const drawn = [element, element.nextElementSibling, element.closest('label')].filter(Boolean);
    const ring = drawn.some((one) => {
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      return (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
    });
    const box = element.getBoundingClientRect();
    return {
      name: name.replace(/\s+/g, ' ').trim(),
      tag: element.tagName,
      ring,
      inView: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
    };
  });
}

/**
 * Presses Tab until what is named has the focus. On the way every stop shows its focus, is in view,
 * and comes after the stop before it in the order in which the page is read.
 */
export async function tabTo(page, name, { back = false } = {}) {
  const fits = (text) => (name instanceof RegExp ? name.test(text) : text === name);
  const passed = [];
  for (let step = 0; step < mostSteps; step += 1) {
    await page.evaluate(() => (globalThis.before = document.activeElement));
    await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
    const now = await focused(page);
    if (!now) continue; // past the end: the browser begins again at the top
    passed.push(now.name);
    assert.ok(now.ring, `no ring shows the focus on ${now.tag} “${now.name}”`);
    assert.ok(now.inView, `${now.tag} “${now.name}” has the focus out of sight`);
    const follows = await page.evaluate((backwards) => {
      const { before } = globalThis;
      const here = document.activeElement;
      if (!before?.isConnected || before === document.body) return true;
      const relation = before.compareDocumentPosition(here);
      const after = Boolean(relation & Node.DOCUMENT_POSITION_FOLLOWING);
      return after !== backwards;
    }, back);
    // Only at the end does the order begin again.
    if (!follows && passed.length > 1) {
      const first = await page.evaluate(
        () =>
          document.activeElement ===
          document.querySelector('a[href], button, input, select, textarea, summary, [tabindex]'),
      );
      assert.ok(first, `“${now.name}” is read before “${passed.at(-2)}” and reached after it`);
    }
    if (fits(now.name)) return now;
  }
  assert.fail(`${name} cannot be reached by Tab; passed: ${passed.join(' | ')}`);
}

/** The page as a screen reader has it, in its order. */
export async function accessibilityTree(page) {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  const known = new Map(nodes.map((node) => [node.nodeId, node]));
  const inOrder = (node) => [
    node,
    ...(node.childIds ?? []).flatMap((id) => (known.has(id) ? inOrder(known.get(id)) : [])),
  ];
  return inOrder(nodes[0])
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, properties = [] }) => ({
      role: role?.value ?? '',
      name: name?.value ?? '',
      ...Object.fromEntries(properties.map((one) => [one.name, one.value?.value])),
    }));
}

const controls = new Set([
  'button',
  'link',
  'textbox',
  'searchbox',
  'checkbox',
  'radio',
  'combobox',
  'DisclosureTriangle',
]);

/** What is wrong with the page as a screen reader has it. */
export async function wrongInTree(page) {
  const tree = await accessibilityTree(page);
  const wrong = tree
    .filter(({ role, name }) => controls.has(role) && name.trim() === '')
    .map(({ role }) => `a ${role} without a name`);
  const headings = tree.filter(({ role }) => role === 'heading');
  const first = headings.filter(({ level }) => level === 1);
  if (first.length !== 1) wrong.push(`${first.length} first headings`);
  headings.forEach(({ level, name }, index) => {
    // The navigation may stand before the page, under a heading of its own.
    const before = index === 0 ? 1 : headings[index - 1].level;
    if (level > before + 1) wrong.push(`heading ${level} “${name}” below a heading ${before}`);
    if (name.trim() === '') wrong.push('a heading without words');
  });
  for (const landmark of ['banner', 'main', 'contentinfo']) {
    const number = tree.filter(({ role }) => role === landmark).length;
    if (number !== 1) wrong.push(`${number} of ${landmark}`);
  }
  return wrong;
}

/** Controls by their names in the order in which they are read. */
export async function readInOrder(page, names) {
  const tree = await accessibilityTree(page);
  const places = names.map((name) => tree.findIndex((node) => node.name === name));
  names.forEach((name, index) => assert.ok(places[index] >= 0, `“${name}” is not read at all`));
  assert.deepEqual(
    places,
    places.toSorted((a, b) => a - b),
    `not read in this order: ${names.join(', ')}`,
  );
}
