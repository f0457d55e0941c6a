/**
 * Fingers, mouse and pen on a photo: one finger taps, drags a handle, draws or moves the photo, two
 * zoom. All places are in pixels of the page from the upper left corner of the photo's frame.
 */
import type { Spot } from './photo_draft';

export interface GestureHearer {
  /** The handle under a place, if there is one. */
  handleAt(at: Spot): number | undefined;
  /** Whether one finger draws; else it moves the photo. */
  draws(): boolean;
  tap(at: Spot): void;
  handle(index: number, by: Spot, done: boolean): void;
  stroke(path: Spot[], done: boolean): void;
  /** A stroke that became a zoom. */
  giveUp(): void;
  move(by: Spot): void;
  zoom(factor: number, from: Spot, to: Spot): void;
}

/** Less than this is a tap of a hand that is not quite still. */
const steadyPixels = 7;

const between = ([a, b]: Spot, [c, d]: Spot): Spot => [(a + c) / 2, (b + d) / 2];
const apart = ([a, b]: Spot, [c, d]: Spot): number => Math.hypot(a - c, b - d);

type Doing =
  | { what: 'nothing' }
  | { what: 'press'; from: Spot; last: Spot; moved: boolean }
  | { what: 'handle'; index: number; from: Spot }
  | { what: 'stroke'; path: Spot[] }
  | { what: 'pinch' };

export class PhotoGestures {
  private readonly fingers = new Map<number, Spot>();
  private doing: Doing = { what: 'nothing' };

  constructor(private readonly hearer: GestureHearer) {}

  down(finger: number, at: Spot): void {
    this.fingers.set(finger, at);
    if (this.fingers.size > 1) {
      if (this.doing.what === 'stroke') this.hearer.giveUp();
      if (this.doing.what === 'handle') this.hearer.handle(this.doing.index, [0, 0], true);
      this.doing = { what: 'pinch' };
      return;
    }
    const index = this.hearer.handleAt(at);
    if (index !== undefined) this.doing = { what: 'handle', index, from: at };
    else if (this.hearer.draws()) this.doing = { what: 'stroke', path: [at] };
    else this.doing = { what: 'press', from: at, last: at, moved: false };
  }

  move(finger: number, at: Spot): void {
    const before = this.fingers.get(finger);
    if (!before) return;
    if (this.doing.what === 'pinch') {
      const other = [...this.fingers].find(([id]) => id !== finger)?.[1];
      this.fingers.set(finger, at);
      if (!other) return;
      const factor = apart(at, other) / Math.max(1, apart(before, other));
      this.hearer.zoom(factor, between(before, other), between(at, other));
      return;
    }
    this.fingers.set(finger, at);
    this.dragTo(at);
  }

  private dragTo(at: Spot): void {
    const { doing } = this;
    if (doing.what === 'handle') {
      this.hearer.handle(doing.index, [at[0] - doing.from[0], at[1] - doing.from[1]], false);
    } else if (doing.what === 'stroke') {
      doing.path.push(at);
      this.hearer.stroke(doing.path, false);
    } else if (doing.what === 'press') {
      doing.moved ||= apart(at, doing.from) > steadyPixels;
      if (!doing.moved) return;
      this.hearer.move([at[0] - doing.last[0], at[1] - doing.last[1]]);
      doing.last = at;
    }
  }

  up(finger: number, at: Spot): void {
    if (!this.fingers.delete(finger)) return;
    const { doing } = this;
    if (this.fingers.size > 0) return;
    this.doing = { what: 'nothing' };
    if (doing.what === 'handle') {
      this.hearer.handle(doing.index, [at[0] - doing.from[0], at[1] - doing.from[1]], true);
    } else if (doing.what === 'stroke') {
      const long = doing.path.some((spot) => apart(spot, doing.path[0] ?? spot) > steadyPixels);
      if (long) this.hearer.stroke([...doing.path, at], true);
      else this.hearer.giveUp();
    } else if (doing.what === 'press' && !doing.moved) {
      this.hearer.tap(at);
    }
  }

  /** The browser took the finger away: nothing of it counts. */
  lose(finger: number): void {
    if (!this.fingers.delete(finger)) return;
    if (this.doing.what === 'stroke') this.hearer.giveUp();
    if (this.doing.what === 'handle') this.hearer.handle(this.doing.index, [0, 0], true);
    if (this.fingers.size === 0) this.doing = { what: 'nothing' };
  }
}
