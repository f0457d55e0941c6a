import { describe, expect, it } from 'vitest';
import { about, onPage, onPhoto, wholePhoto, within, zoomed } from './view_transform';

const photo = { width: 4000, height: 3000 };
const page = { width: 400, height: 400 };

describe('what part of a photo is shown', () => {
  it('begins with the whole of it, in the middle', () => {
    const view = wholePhoto(photo, page);
    expect(view.scale).toBeCloseTo(0.1);
    expect(onPage(view, [0, 0])).toEqual([0, 50]);
    expect(onPage(view, [4000, 3000])).toEqual([400, 350]);
  });

  it('keeps what is between two fingers between them', () => {
    const before = about([1000, 1000], 800, page);
    const place = onPhoto(before, [100, 300]);
    const after = zoomed(before, 2, [100, 300], [150, 250]);
    const [x, y] = onPage(after, place);
    expect(x).toBeCloseTo(150);
    expect(y).toBeCloseTo(250);
  });

  it('shows no more beside the photo than it must, and no pixel as large as a thumb', () => {
    expect(within({ scale: 1, left: -500, top: 9999 }, photo, page)).toEqual({
      scale: 1,
      left: 0,
      top: 2600,
    });
    expect(within({ scale: 1e-9, left: 0, top: 0 }, photo, page).scale).toBeCloseTo(0.1);
    expect(within({ scale: 1e9, left: 0, top: 0 }, photo, page).scale).toBe(8);
    // A photo smaller than the page is shown as large as the page.
    expect(wholePhoto({ width: 20, height: 20 }, page).scale).toBe(20);
  });
});
