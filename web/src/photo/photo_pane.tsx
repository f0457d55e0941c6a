/** A photo that is moved, zoomed, tapped and drawn upon, by finger, mouse and keys. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { cursorAfter } from './pane_keys';
import type { Spot } from './photo_draft';
import { PhotoGestures } from './photo_gestures';
import { photoWords as words } from '../strings';
import {
  about,
  type Area,
  onPage,
  onPhoto,
  type PhotoView,
  wholePhoto,
  within,
  zoomed,
} from './view_transform';

/** What a finger does on the photo; places are in pixels of the photo. */
export interface PaneTool {
  /** What is said of it to a screen reader. */
  label: string;
  /** Points that can be dragged. */
  handles?: readonly Spot[];
  onHandle?: (index: number, at: Spot, done: boolean) => void;
  onTap?: (at: Spot) => void;
  /** One finger draws; `line` where only both ends count. */
  onStroke?: (path: Spot[]) => void;
  line?: boolean;
}

export interface PaneProps {
  image: ImageBitmap | undefined;
  photo: Area;
  tool: PaneTool;
  /** Draws upon the photo: places are those of the photo, `pixel` is one of the page in them. */
  paint: (context: CanvasRenderingContext2D, pixel: number) => void;
  /** What paint draws: a new value draws anew. */
  painted: unknown;
  /** Shown this near, whenever it changes. */
  focus?: { at: Spot; across: number } | undefined;
  children?: ComponentChildren;
}

/** A finger reaches a handle that is so near, in pixels of the page. */
const handleReach = 26;
const zoomStep = 1.5;

function useArea() {
  const frame = useRef<HTMLDivElement>(null);
  const [area, setArea] = useState<Area>({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return undefined;
    const measure = () => setArea({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { frame, area };
}

interface PaneState {
  view: PhotoView;
  stroke: Spot[];
  cursor: Spot | undefined;
}

function usePane({ photo, tool, focus }: PaneProps, area: Area) {
  const [shown, setShown] = useState<PaneState | undefined>(undefined);
  const now = useRef({ shown, photo, tool, area });
  now.current = { shown, photo, tool, area };
  /** Where the handle lay that is being dragged. */
  const dragged = useRef<Spot | undefined>(undefined);
  const alter = (change: (state: PaneState) => Partial<PaneState>) =>
    setShown((state) => {
      if (!state) return state;
      const next = { ...state, ...change(state) };
      return { ...next, view: within(next.view, now.current.photo, now.current.area) };
    });

  useLayoutEffect(() => {
    if (area.width === 0) return;
    setShown((state) => ({
      view: state ? within(state.view, photo, area) : wholePhoto(photo, area),
      stroke: [],
      cursor: state?.cursor,
    }));
  }, [area.width, area.height, photo.width, photo.height]);

  const [x, y] = focus?.at ?? [];
  useLayoutEffect(() => {
    if (focus) alter(() => ({ view: about(focus.at, focus.across, now.current.area) }));
  }, [x, y, focus?.across, shown === undefined]);

  const gestures = useMemo(() => {
    const view = () => now.current.shown?.view ?? { scale: 1, left: 0, top: 0 };
    return new PhotoGestures({
      handleAt: (at) => {
        const near = (now.current.tool.handles ?? []).map((spot, index) => {
          const [left, top] = onPage(view(), spot);
          return { index, away: Math.hypot(left - at[0], top - at[1]) };
        });
        const best = near.sort((a, b) => a.away - b.away)[0];
        return best && best.away <= handleReach ? best.index : undefined;
      },
      draws: () => now.current.tool.onStroke !== undefined,
      tap: (at) => now.current.tool.onTap?.(onPhoto(view(), at)),
      handle: (index, by, done) => {
        const from = dragged.current ?? now.current.tool.handles?.[index];
        if (!from) return;
        dragged.current = done ? undefined : from;
        const { scale } = view();
        now.current.tool.onHandle?.(
          index,
          [from[0] + by[0] / scale, from[1] + by[1] / scale],
          done,
        );
      },
      stroke: (path, done) => {
        const places = path.map((spot) => onPhoto(view(), spot));
        const ends = now.current.tool.line ? [places[0], places.at(-1)] : places;
        const drawn = ends.filter((spot) => spot !== undefined);
        if (done) now.current.tool.onStroke?.(drawn);
        alter(() => ({ stroke: done ? [] : drawn }));
      },
      giveUp: () => alter(() => ({ stroke: [] })),
      move: ([right, down]) =>
        alter(({ view: { scale, left, top } }) => ({
          view: { scale, left: left - right / scale, top: top - down / scale },
        })),
      zoom: (factor, from, to) =>
        alter((state) => ({ view: zoomed(state.view, factor, from, to) })),
    });
  }, []);
  return { shown, alter, gestures };
}

function drawCross(context: CanvasRenderingContext2D, [x, y]: Spot, pixel: number): void {
  for (const [width, colour] of [
    [4, '#15181a'],
    [2, '#fdfcfa'],
  ] as const) {
    context.lineWidth = width * pixel;
    context.strokeStyle = colour;
    context.beginPath();
    context.moveTo(x - 14 * pixel, y);
    context.lineTo(x + 14 * pixel, y);
    context.moveTo(x, y - 14 * pixel);
    context.lineTo(x, y + 14 * pixel);
    context.stroke();
  }
}

function drawAll(canvas: HTMLCanvasElement, props: PaneProps, state: PaneState, area: Area): void {
  const sharp = globalThis.devicePixelRatio || 1;
  canvas.width = Math.round(area.width * sharp);
  canvas.height = Math.round(area.height * sharp);
  const context = canvas.getContext('2d');
  if (!context) return;
  const { scale, left, top } = state.view;
  const zoom = scale * sharp;
  context.setTransform(zoom, 0, 0, zoom, -left * zoom, -top * zoom);
  const { image, photo } = props;
  if (image) context.drawImage(image, 0, 0, photo.width, photo.height);
  const pixel = 1 / scale;
  context.lineJoin = 'round';
  props.paint(context, pixel);
  if (state.stroke.length > 1) {
    context.beginPath();
    state.stroke.forEach(([x, y], index) =>
      index === 0 ? context.moveTo(x, y) : context.lineTo(x, y),
    );
    context.lineWidth = 5 * pixel;
    context.strokeStyle = '#15181a';
    context.stroke();
    context.lineWidth = 2.5 * pixel;
    context.strokeStyle = '#ffd479';
    context.stroke();
  }
  if (state.cursor) drawCross(context, state.cursor, pixel);
}

export function PhotoPane(props: PaneProps) {
  const { photo, tool, painted, image, children } = props;
  const { frame, area } = useArea();
  const canvas = useRef<HTMLCanvasElement>(null);
  const { shown, alter, gestures } = usePane(props, area);

  useLayoutEffect(() => {
    if (canvas.current && shown && area.width > 0) drawAll(canvas.current, props, shown, area);
  }, [shown, area, image, painted, tool]);

  // The wheel must not scroll the page meanwhile, so it is heard apart.
  useEffect(() => {
    const element = canvas.current;
    if (!element) return undefined;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const at: Spot = [event.offsetX, event.offsetY];
      alter((state) => ({ view: zoomed(state.view, Math.exp(-event.deltaY / 400), at) }));
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, []);

  const placeOf = (event: PointerEvent): Spot => {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const middle: Spot = [area.width / 2, area.height / 2];
  const zoomBy = (factor: number) =>
    alter((state) => ({ view: zoomed(state.view, factor, middle) }));
  const press = (event: KeyboardEvent) => {
    if (!shown) return;
    const cursor = shown.cursor ?? onPhoto(shown.view, middle);
    const pressed = cursorAfter(event, {
      cursor,
      stroke: shown.stroke,
      view: shown.view,
      photo,
      tool,
    });
    if (!pressed) return;
    event.preventDefault();
    if (pressed.zoom !== undefined) zoomBy(pressed.zoom);
    else if (pressed.whole) alter(() => ({ view: wholePhoto(photo, area) }));
    else
      alter(() => ({ cursor: pressed.cursor ?? cursor, stroke: pressed.stroke ?? shown.stroke }));
    pressed.act?.();
  };
  return (
    <div class="photo-pane">
      <div
        class="photo-frame"
        ref={frame}
        style={{ aspectRatio: `${photo.width} / ${photo.height}` }}
      >
        <canvas
          ref={canvas}
          tabIndex={0}
          role="application"
          aria-label={tool.label}
          aria-describedby="photo-keys"
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            alter(() => ({ cursor: undefined }));
            gestures.down(event.pointerId, placeOf(event));
          }}
          onPointerMove={(event) => gestures.move(event.pointerId, placeOf(event))}
          onPointerUp={(event) => gestures.up(event.pointerId, placeOf(event))}
          onPointerCancel={(event) => gestures.lose(event.pointerId)}
          onKeyDown={press}
        />
      </div>
      <div class="zoom-bar">
        <button type="button" class="button quiet" onClick={() => zoomBy(zoomStep)}>
          {words.zoomIn}
        </button>
        <button type="button" class="button quiet" onClick={() => zoomBy(1 / zoomStep)}>
          {words.zoomOut}
        </button>
        <button
          type="button"
          class="button quiet"
          onClick={() => alter(() => ({ view: wholePhoto(photo, area) }))}
        >
          {words.whole}
        </button>
      </div>
      <p class="for-readers" id="photo-keys">
        {words.keys}
      </p>
      {children}
    </div>
  );
}
