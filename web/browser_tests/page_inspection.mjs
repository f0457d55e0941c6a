// What can be measured on a laid-out page. Each returns descriptions of what is wrong.

/** Elements that are wider than the page or cut off text of their own. */
export function overflowing(page) {
  return page.evaluate(() => {
    const found = [];
    const root = document.scrollingElement;
    if (root.scrollWidth > root.clientWidth) {
      found.push(`page: ${root.scrollWidth} in ${root.clientWidth}`);
    }
    for (const element of document.body.querySelectorAll('*')) {
      if (!(element instanceof HTMLElement) || element.closest('.for-readers')) continue;
      if (element.clientWidth === 0 || element.closest('dialog:not([open])')) continue;
      // A long answer moves within its field.
      if (element instanceof HTMLInputElement) continue;
      const wide = element.scrollWidth - element.clientWidth;
      const clipsDown = getComputedStyle(element).overflowY === 'hidden';
      const high = clipsDown ? element.scrollHeight - element.clientHeight : 0;
      if (wide > 1 || high > 1) {
        found.push(`${element.tagName}.${element.className}: ${element.textContent.slice(0, 50)}`);
      }
    }
    return found;
  });
}

/** Texts of pictures that leave their picture. */
export function textOutsidePictures(page) {
  return page.evaluate(() => {
    const found = [];
    for (const svg of document.querySelectorAll('.drawing svg')) {
      const frame = svg.getBoundingClientRect();
      for (const text of svg.querySelectorAll('text')) {
        const box = text.getBoundingClientRect();
        const outside = Math.max(
          frame.left - box.left,
          box.right - frame.right,
          frame.top - box.top,
          box.bottom - frame.bottom,
        );
        if (outside > 1) found.push(`${text.textContent}: ${outside.toFixed(1)} px outside`);
      }
    }
    return found;
  });
}

/** Pairs of texts of one picture that lie on one another. */
export function textOnText(page) {
  return page.evaluate(() => {
    const found = [];
    for (const svg of document.querySelectorAll('.drawing svg')) {
      const texts = [...svg.querySelectorAll('text')].map((text) => ({
        words: text.textContent,
        box: text.getBoundingClientRect(),
      }));
      texts.forEach((one, index) => {
        for (const other of texts.slice(index + 1)) {
          const across =
            Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
          const down =
            Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
          const height = Math.min(one.box.height, other.box.height);
          if (across > 2 && down > height * 0.4) found.push(`“${one.words}” on “${other.words}”`);
        }
      });
    }
    return found;
  });
}

/** Controls that are smaller than 48 px either way. */
export function smallTargets(page) {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, summary, a.button, .units label, .language, .places a, .lot-link, .choice label',
      ),
    ]
      .filter((element) => element.getClientRects().length > 0)
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 47.5 || box.height < 47.5)
      .map(({ element, box }) => `${element.textContent}: ${box.width} × ${box.height}`),
  );
}
