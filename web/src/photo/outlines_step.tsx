/** The outlines over a photo, and what is mended about them: joined, cut, removed, drawn. */
import { problemWords } from '../engine_problem';
import { useState } from 'preact/hooks';
import { failureFrom } from '../engine';
import { strings } from '../strings';
import type { MeasuredPhoto, PhotoTap, Spot } from './photo_draft';
import { isWithin, type Outlines, paintOutlines, stoneAt } from './photo_paint';
import { type PaneTool, PhotoPane } from './photo_pane';
import { photoWords as words } from '../strings';
import { vision } from './vision';
import type { Outline, OutlineEdit } from './vision_messages';

const tools = ['look', 'join', 'cut', 'remove', 'draw', 'not rock'] as const;
type ToolName = (typeof tools)[number];

/** Places along a line that are asked which stone they lie on. */
const lookedAt = 25;

/** The stone that most of a line lies on. */
function stoneUnder(outlines: Outlines, [from, to]: Spot[]): number | undefined {
  if (!from || !to) return undefined;
  const times = new Map<number, number>();
  for (let step = 0; step <= lookedAt; step += 1) {
    const part = step / lookedAt;
    const number = stoneAt(outlines, [
      from[0] + part * (to[0] - from[0]),
      from[1] + part * (to[1] - from[1]),
    ]);
    if (number !== undefined) times.set(number, (times.get(number) ?? 0) + 1);
  }
  return [...times].sort((a, b) => b[1] - a[1])[0]?.[0];
}

/** The numbers of the stones most of whose corners lie within a loop. */
function stonesWithin(outlines: Outlines, loop: Outline): number[] {
  return outlines.flatMap((outline, number) => {
    const inside = outline?.filter((corner) => isWithin(loop, corner)).length ?? 0;
    return outline && 2 * inside > outline.length ? [number] : [];
  });
}

export interface OutlinesStepProps {
  photo: MeasuredPhoto;
  image: ImageBitmap | undefined;
  number: number;
  onTap: (tap: PhotoTap) => void;
}

/** Works out a change and puts it down; resolves with what stands in its way. */
function useEditing({ photo, onTap }: OutlinesStepProps) {
  const [trouble, setTrouble] = useState('');
  const { outlines } = photo;
  const of = photo.taken.file;
  const known = (numbers: number[]) =>
    numbers.flatMap((number): Outline[] => (outlines[number] ? [outlines[number]] : []));
  const replace = (gone: number[], come: Outline[]) => {
    setTrouble('');
    onTap({ of, gone, come });
  };
  const edit = async (change: OutlineEdit, gone: number[]): Promise<boolean> => {
    try {
      const answer = await vision.edit(change);
      if ('problems' in answer) {
        const [first] = answer.problems;
        setTrouble(first ? problemWords(first) : '');
        return false;
      }
      replace(gone, answer.outlines);
      return true;
    } catch (error) {
      setTrouble(strings.failures.sentences[failureFrom(error).kind]);
      return false;
    }
  };
  return { trouble, setTrouble, edit, replace, known };
}

export function OutlinesStep(props: OutlinesStepProps) {
  const { photo, image, number: photoNumber } = props;
  const { taken, outlines } = photo;
  const [name, setName] = useState<ToolName>('look');
  const [selected, setSelected] = useState<number | undefined>(undefined);
  const { trouble, setTrouble, edit, replace, known } = useEditing(props);
  const pixel = taken.found?.working_pixel ?? 1;

  const joinWith = async (other: number) => {
    if (selected === undefined || selected === other) {
      setSelected(selected === other ? undefined : other);
      return;
    }
    const gone = [selected, other];
    const done = await edit({ ask: 'join', pixel, outlines: known(gone) }, gone);
    // What came of it is the last, and may be joined with more.
    if (done) setSelected(outlines.length);
  };
  const tap = (at: Spot) => {
    const stone = stoneAt(outlines, at);
    setTrouble(stone === undefined ? words.missed : '');
    if (stone === undefined) setSelected(undefined);
    else if (name === 'remove') replace([stone], []);
    else if (name === 'join') void joinWith(stone);
  };
  const stroke = (path: Spot[]) => {
    const [from, to] = path;
    if (name === 'cut' && from && to) {
      const stone = stoneUnder(outlines, path);
      const [outline] = stone === undefined ? [] : known([stone]);
      if (stone === undefined || !outline) setTrouble(words.missed);
      else void edit({ ask: 'cut', pixel, outlines: [outline], line: [from, to] }, [stone]);
    } else if (name === 'draw') {
      const others = known([...outlines.keys()]);
      const { width, height } = taken;
      void edit({ ask: 'draw', pixel, path, outlines: others, width, height }, []);
    } else if (name === 'not rock') {
      const gone = stonesWithin(outlines, path);
      if (gone.length > 0) replace(gone, []);
      else setTrouble(words.missed);
    }
  };
  const draws = name === 'cut' || name === 'draw' || name === 'not rock';
  const tool: PaneTool = {
    label: words.picture(photoNumber, words.tools[name].what),
    ...(draws ? { onStroke: stroke, line: name === 'cut' } : { onTap: tap }),
  };
  if (name === 'look') delete tool.onTap;
  return (
    <>
      <div class="photo-tools" role="group" aria-label={words.tool}>
        {tools.map((one) => (
          <button
            key={one}
            type="button"
            class="button quiet"
            aria-pressed={name === one}
            onClick={() => {
              setName(one);
              setSelected(undefined);
              setTrouble('');
            }}
          >
            {words.tools[one].name}
          </button>
        ))}
      </div>
      <PhotoPane
        image={image}
        photo={taken}
        painted={[outlines, selected]}
        tool={tool}
        paint={(context, page) =>
          paintOutlines(context, page, outlines, new Set(selected === undefined ? [] : [selected]))
        }
      />
      <p class="pane-hint">{words.tools[name].what}</p>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      <p role="status">{words.stones(outlines.filter((one) => one !== undefined).length)}</p>
      {(taken.found?.cautions ?? []).map((caution) => (
        <p class="caution" key={caution}>
          {caution}
        </p>
      ))}
    </>
  );
}
