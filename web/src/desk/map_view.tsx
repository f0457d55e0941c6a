/** A drawing that can be moved and enlarged: by keys, by buttons, by finger and by mouse. */
import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { strings } from '../strings';
import {
  enlarged,
  middleOf,
  moved,
  type Point,
  type Size,
  type ViewBox,
  wholeOf,
} from './map_view_box';

const words = strings.desk.studies.map;

/** One press of a key or a button. */
const step = 0.2;
const factor = 1.5;
/** A finger that moved less than this has tapped. */
const tapPixels = 6;

/** What a key does to what is seen; undefined for the others. */
function keyed(key: string, box: ViewBox, whole: Size): ViewBox | undefined {
  switch (key) {
    case 'ArrowLeft':
      return moved(box, -step, 0, whole);
    case 'ArrowRight':
      return moved(box, step, 0, whole);
    case 'ArrowUp':
      return moved(box, 0, -step, whole);
    case 'ArrowDown':
      return moved(box, 0, step, whole);
    case '+':
    case '=':
      return enlarged(box, factor, middleOf(box), whole);
    case '-':
      return enlarged(box, 1 / factor, middleOf(box), whole);
    case '0':
      return wholeOf(whole);
    default:
      return undefined;
  }
}

/** Fingers on the drawing: one moves it, two enlarge it, one that stays where it is has tapped. */
function useFingers(
  drawing: RefObject<SVGSVGElement | null>,
  whole: Size,
  show: (next: (box: ViewBox) => ViewBox) => void,
  onTap: (at: Point) => void,
) {
  const fingers = useRef(new Map<number, Point>());
  const travelled = useRef(0);
  const onDrawing = ({ x, y }: Point): Point => {
    const matrix = drawing.current?.getScreenCTM()?.inverse();
    const at = matrix ? new DOMPoint(x, y).matrixTransform(matrix) : { x: 0, y: 0 };
    return { x: at.x, y: at.y };
  };
  const apart = (): number => {
    const [one, other] = [...fingers.current.values()];
    return one && other ? Math.hypot(one.x - other.x, one.y - other.y) : 0;
  };
  return {
    onDrawing,
    down: (event: PointerEvent) => {
      if (fingers.current.size === 0) travelled.current = 0;
      fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
      drawing.current?.setPointerCapture(event.pointerId);
    },
    move: (event: PointerEvent) => {
      const before = fingers.current.get(event.pointerId);
      if (!before) return;
      const wasApart = apart();
      const now = { x: event.clientX, y: event.clientY };
      fingers.current.set(event.pointerId, now);
      travelled.current += Math.hypot(now.x - before.x, now.y - before.y);
      if (fingers.current.size === 2 && wasApart > 0) {
        const about = onDrawing(now);
        show((box) => enlarged(box, apart() / wasApart, about, whole));
      } else if (travelled.current > tapPixels) {
        const from = onDrawing(before);
        const to = onDrawing(now);
        show((box) => moved(box, (from.x - to.x) / box.width, (from.y - to.y) / box.height, whole));
      }
    },
    up: (event: PointerEvent) => {
      const known = fingers.current.delete(event.pointerId);
      if (known && fingers.current.size === 0 && travelled.current <= tapPixels) {
        onTap(onDrawing({ x: event.clientX, y: event.clientY }));
      }
    },
    cancel: (event: PointerEvent) => void fingers.current.delete(event.pointerId),
  };
}

/** A cross with its letter, of one size on the screen however much is seen. */
function Marker({
  at,
  name,
  chosen,
  unit,
}: {
  at: Point;
  name: string;
  chosen: boolean;
  unit: number;
}) {
  const arm = 14 * unit;
  return (
    <g class={chosen ? 'map-marker chosen' : 'map-marker'}>
      <circle cx={at.x} cy={at.y} r={arm} />
      <path d={`M${at.x - arm} ${at.y}h${2 * arm}M${at.x} ${at.y - arm}v${2 * arm}`} />
      <text x={at.x + arm * 1.2} y={at.y - arm * 0.6} font-size={18 * unit}>
        {name}
      </text>
    </g>
  );
}

export interface MapMarker {
  name: string;
  at: Point;
  chosen: boolean;
}

export function MapView({
  label,
  whole,
  markers = [],
  onPick,
  onNudge,
  children,
}: {
  label: string;
  whole: Size;
  markers?: readonly MapMarker[];
  /** A place was tapped. */
  onPick?: (at: Point) => void;
  /** With Shift, arrow keys move what is chosen by so much of the drawing. */
  onNudge?: (by: Point) => void;
  children: ComponentChildren;
}) {
  const drawing = useRef<SVGSVGElement>(null);
  const [box, setBox] = useState<ViewBox>(() => wholeOf(whole));
  const [unit, setUnit] = useState(1);
  useEffect(() => setBox(wholeOf(whole)), [whole.width, whole.height]);
  useEffect(() => {
    const width = drawing.current?.clientWidth ?? 0;
    if (width > 0) setUnit(box.width / width);
  }, [box]);
  const fingers = useFingers(drawing, whole, setBox, (at) => onPick?.(at));
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.shiftKey && onNudge && event.key.startsWith('Arrow')) {
      event.preventDefault();
      const by = 2 * unit;
      const across = event.key === 'ArrowRight' ? by : event.key === 'ArrowLeft' ? -by : 0;
      const down = event.key === 'ArrowDown' ? by : event.key === 'ArrowUp' ? -by : 0;
      onNudge({ x: across, y: down });
      return;
    }
    const next = keyed(event.key, box, whole);
    if (!next) return;
    event.preventDefault();
    setBox(next);
  };
  const button = (key: string, name: string, sign: string) => (
    <button
      type="button"
      class="button quiet small"
      aria-label={name}
      onClick={() => setBox((now) => keyed(key, now, whole) ?? now)}
    >
      {sign}
    </button>
  );
  return (
    <div class="map-view">
      <svg
        ref={drawing}
        class="map-drawing"
        role="group"
        aria-label={label}
        tabindex={0}
        viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
        onKeyDown={press}
        onPointerDown={fingers.down}
        onPointerMove={fingers.move}
        onPointerUp={fingers.up}
        onPointerCancel={fingers.cancel}
      >
        {children}
        {markers.map((marker) => (
          <Marker key={marker.name} {...marker} unit={unit} />
        ))}
      </svg>
      <div class="map-buttons" role="group" aria-label={words.seen}>
        {button('+', words.larger, '+')}
        {button('-', words.smaller, '−')}
        {button('ArrowLeft', words.left, '←')}
        {button('ArrowRight', words.right, '→')}
        {button('ArrowUp', words.up, '↑')}
        {button('ArrowDown', words.down, '↓')}
        {button('0', words.all, words.allShort)}
      </div>
    </div>
  );
}
