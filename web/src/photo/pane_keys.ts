/** The keyboard on a photo: a cross that is moved by arrows and taps with Enter. */
import type { Spot } from './photo_draft';
import type { PaneTool } from './photo_pane';
import type { Area, PhotoView } from './view_transform';

export interface KeyedPane {
  cursor: Spot;
  stroke: Spot[];
  view: PhotoView;
  photo: Area;
  tool: PaneTool;
}

/** What a key asks for; undefined where it means nothing here. */
export interface KeyedChange {
  cursor?: Spot;
  stroke?: Spot[];
  zoom?: number;
  whole?: boolean;
  act?: () => void;
}

/** Pixels of the page. */
const step = 16;
const fineStep = 2;
const zoomStep = 1.5;

const ways: Record<string, Spot> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const same = ([a, b]: Spot, [c, d]: Spot) => a === c && b === d;

/** Each Enter sets a corner; the second in one place, or the other end of a line, ends it. */
function strokeAfter({ cursor, stroke, tool }: KeyedPane): KeyedChange {
  const last = stroke.at(-1);
  const ends = tool.line ? stroke.length === 1 : last !== undefined && same(last, cursor);
  const path = last && same(last, cursor) ? stroke : [...stroke, cursor];
  if (!ends) return { stroke: path };
  return { stroke: [], act: () => tool.onStroke?.(path) };
}

export function cursorAfter(
  { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>,
  pane: KeyedPane,
): KeyedChange | undefined {
  const way = ways[key];
  if (way) {
    const by = (shiftKey ? fineStep : step) / pane.view.scale;
    const place = (at: number, whole: number) => Math.min(Math.max(at, 0), whole);
    return {
      cursor: [
        place(pane.cursor[0] + way[0] * by, pane.photo.width),
        place(pane.cursor[1] + way[1] * by, pane.photo.height),
      ],
    };
  }
  switch (key) {
    case '+':
    case '=':
      return { zoom: zoomStep };
    case '-':
      return { zoom: 1 / zoomStep };
    case '0':
      return { whole: true };
    case 'Escape':
      return pane.stroke.length > 0 ? { stroke: [] } : undefined;
    case 'Enter':
    case ' ':
      if (pane.tool.onStroke) return strokeAfter(pane);
      return { act: () => pane.tool.onTap?.(pane.cursor) };
    default:
      return undefined;
  }
}
