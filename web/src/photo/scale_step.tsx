/** What tells the scale of a photo: balls or a staff, marked by two taps each and dragged to fit. */
import { useState } from 'preact/hooks';
import { LengthField } from './length_field';
import { type MeasuredPhoto, type PhotoScale, type Spot, type View } from './photo_draft';
import { paintHandle, paintScale } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { photoWords as words } from '../strings';

type Marks = 'balls' | 'staffs';

const apart = ([a, b]: Spot, [c, d]: Spot): number => Math.hypot(a - c, b - d);
/** A tenth of a pixel is finer than anybody taps. */
const tenth = (value: number) => Math.round(value * 10) / 10;
const spot = ([x, y]: Spot): Spot => [tenth(x), tenth(y)];

/** Two points for each mark: middle and edge of a ball, both ends of a staff. */
function handlesOf({ balls, staffs }: PhotoScale): Spot[] {
  return [
    ...balls.flatMap(({ middle: [x, y], radius }): Spot[] => [
      [x, y],
      [x + radius, y],
    ]),
    ...staffs.flatMap(({ from, to }): Spot[] => [from, to]),
  ];
}

/** The scale once one of those points lies elsewhere. */
export function withHandle(scale: PhotoScale, index: number, at: Spot): PhotoScale {
  const ballPoints = 2 * scale.balls.length;
  const mark = Math.floor((index < ballPoints ? index : index - ballPoints) / 2);
  const second = index % 2 === 1;
  if (index < ballPoints) {
    const balls = scale.balls.map((ball, number) =>
      number !== mark
        ? ball
        : second
          ? { ...ball, radius: tenth(apart(ball.middle, at)) }
          : { ...ball, middle: spot(at) },
    );
    return { ...scale, balls };
  }
  const staffs = scale.staffs.map((staff, number) =>
    number !== mark ? staff : { ...staff, [second ? 'to' : 'from']: spot(at) },
  );
  return { ...scale, staffs };
}

/** The scale with one mark more; its length is that of the mark before, until another is stated. */
export function withMark(scale: PhotoScale, marks: Marks, first: Spot, second: Spot): PhotoScale {
  if (marks === 'balls') {
    const diameter = scale.balls.at(-1)?.diameter ?? '';
    const ball = { middle: spot(first), radius: tenth(apart(first, second)), diameter };
    return { ...scale, balls: [...scale.balls, ball] };
  }
  const length = scale.staffs.at(-1)?.length ?? '';
  const staff = { from: spot(first), to: spot(second), length };
  return { ...scale, staffs: [...scale.staffs, staff] };
}

/** The scale with the diameter of a ball stated; balls of no stated diameter are taken to be alike. */
export function withDiameter(scale: PhotoScale, index: number, diameter: string): PhotoScale {
  const balls = scale.balls.map((ball, at) =>
    at === index || ball.diameter === '' ? { ...ball, diameter } : ball,
  );
  return { ...scale, balls };
}

function Choice<Value extends string>({
  legend,
  name,
  labels,
  value,
  onValue,
}: {
  legend: string;
  name: string;
  labels: Record<Value, string>;
  value: Value;
  onValue: (value: Value) => void;
}) {
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {(Object.keys(labels) as Value[]).map((one) => (
        <label key={one}>
          <input
            type="radio"
            name={name}
            value={one}
            checked={value === one}
            onChange={() => onValue(one)}
          />
          <span>{labels[one]}</span>
        </label>
      ))}
    </fieldset>
  );
}

function MarkFields({
  scale,
  onScale,
}: {
  scale: PhotoScale;
  onScale: (scale: PhotoScale) => void;
}) {
  const without = <Mark,>(marks: Mark[], index: number) => marks.filter((_, at) => at !== index);
  const row = (
    label: string,
    value: string,
    remove: string,
    onValue: (text: string) => void,
    onRemove: () => void,
  ) => (
    <div class="scale-mark" key={label}>
      <LengthField label={label} value={value} onValue={onValue} />
      <button type="button" class="button quiet" onClick={onRemove}>
        {remove}
      </button>
    </div>
  );
  return (
    <>
      {scale.balls.map((ball, index) =>
        row(
          words.ball(index + 1),
          ball.diameter,
          words.removeBall(index + 1),
          (diameter) => onScale(withDiameter(scale, index, diameter)),
          () => onScale({ ...scale, balls: without(scale.balls, index) }),
        ),
      )}
      {scale.staffs.map((staff, index) =>
        row(
          words.staff(index + 1),
          staff.length,
          words.removeStaff(index + 1),
          (length) =>
            onScale({
              ...scale,
              staffs: scale.staffs.map((one, at) => (at === index ? { ...one, length } : one)),
            }),
          () => onScale({ ...scale, staffs: without(scale.staffs, index) }),
        ),
      )}
      {scale.staffs.length > 0 && (
        <label class="field-label">
          <span>{words.scaleError}</span>
          <select
            value={scale.scale_error}
            onChange={({ currentTarget }) =>
              onScale({ ...scale, scale_error: currentTarget.value })
            }
          >
            {Object.entries(words.scaleErrors).map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}

export function ScaleStep({
  photo,
  image,
  label,
  onScale,
}: {
  photo: MeasuredPhoto;
  image: ImageBitmap | undefined;
  label: string;
  /** Resolves once the scale is kept. */
  onScale: (scale: PhotoScale) => Promise<unknown>;
}) {
  const [marks, setMarks] = useState<Marks>(photo.scale.staffs.length > 0 ? 'staffs' : 'balls');
  const [first, setFirst] = useState<Spot | undefined>(undefined);
  /** What is changed and not kept yet: the next change is made upon it. */
  const [changed, setChanged] = useState<PhotoScale | undefined>(undefined);
  const scale = changed ?? photo.scale;
  const put = (next: PhotoScale) => {
    setChanged(next);
    const settle = () => setChanged((now) => (now === next ? undefined : now));
    void onScale(next).then(settle);
  };
  const handles = handlesOf(scale);
  return (
    <>
      <PhotoPane
        image={image}
        photo={photo.taken}
        painted={[scale, first]}
        tool={{
          label,
          handles,
          onHandle: (index, at, done) => {
            const next = withHandle(scale, index, at);
            if (done) put(next);
            else setChanged(next);
          },
          onTap: (at) => {
            if (first === undefined) {
              setFirst(at);
            } else {
              setFirst(undefined);
              put(withMark(scale, marks, first, at));
            }
          },
        }}
        paint={(context, pixel) => {
          paintScale(context, pixel, scale);
          for (const at of [...handles, ...(first ? [first] : [])]) {
            paintHandle(context, pixel, at);
          }
        }}
      />
      <p class="pane-hint">{marks === 'balls' ? words.tapBall : words.tapStaff}</p>
      <div class="photo-fields">
        <Choice
          legend={words.scaleBy}
          name="marks"
          labels={words.scales}
          value={marks}
          onValue={(next: Marks) => {
            setFirst(undefined);
            setMarks(next);
          }}
        />
        {handles.length === 0 && <p>{words.noMark}</p>}
        {scale.balls.some(({ diameter }) => diameter === '') && <p>{words.statedBalls}</p>}
        <MarkFields scale={scale} onScale={put} />
        <Choice
          legend={words.view}
          name="view"
          labels={words.views}
          value={scale.view}
          onValue={(view: View) => put({ ...scale, view })}
        />
      </div>
    </>
  );
}
