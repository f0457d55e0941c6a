/** Many pictures are drawn a few at a time, so that the page answers meanwhile. */

/** So much is drawn in one go; a picture that is begun is ended. */
const longestMs = 8;

const waiting: (() => void)[] = [];
/** Of the present go. */
let spentMs = 0;
let coming = false;

function draw(one: () => void): void {
  const began = performance.now();
  one();
  spentMs += performance.now() - began;
}

function nextGo(): void {
  coming = false;
  spentMs = 0;
  while (waiting.length > 0 && spentMs < longestMs) draw(waiting.shift() ?? (() => undefined));
  if (waiting.length > 0) expectGo();
}

function expectGo(): void {
  if (coming) return;
  coming = true;
  setTimeout(nextGo);
}

/** Draws at once or, where much is drawn already, in its turn; the result takes it back. */
export function drawInTurn(one: () => void): () => void {
  expectGo();
  if (waiting.length === 0 && spentMs < longestMs) {
    draw(one);
    return () => undefined;
  }
  waiting.push(one);
  return () => {
    const place = waiting.indexOf(one);
    if (place >= 0) waiting.splice(place, 1);
  };
}

/** Draws all that waits: the page is about to be printed. */
export function drawAllNow(): void {
  for (const one of waiting.splice(0)) one();
}
