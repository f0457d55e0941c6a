/** The plan of a channel over an image of the user's own, which stays on this device. */
import { EngineText } from '../engine_text';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Picture } from '../findings';
import { fileTaker } from '../open_site';
import { openedSite } from '../record/site_record';
import { safeSvg } from '../safe_svg';
import { view } from '../site_assessment';
import { strings } from '../strings';
import { type ControlPoint, onGround, onPicture, placed } from './image_placing';
import { nameOfItem } from './list_page';
import { MapView } from './map_view';
import type { Point, Size } from './map_view_box';
import {
  dropPlanImage,
  keepPlanImage,
  type PlanImage,
  planImage,
  type PlanImageRefusal,
  readPlanImage,
} from './plan_images';
import { StudyFrame } from './study_frame';

const words = strings.desk.studies.plan;

type PlacedPicture = Picture & { frame: NonNullable<Picture['frame']> };

/** The engine's drawing cleaned, without words of its own: the map says what it is. */
function drawingOf(text: string): SVGSVGElement | undefined {
  const svg = safeSvg(text);
  if (!svg) return undefined;
  for (const child of [...svg.children]) {
    if (child.localName === 'title' || child.localName === 'desc') child.remove();
  }
  svg.removeAttribute('aria-labelledby');
  svg.removeAttribute('role');
  svg.setAttribute('aria-hidden', 'true');
  return svg;
}

function sizeOf(svg: SVGSVGElement): Size {
  const [, , width = 1, height = 1] = (svg.getAttribute('viewBox') ?? '').split(/\s+/).map(Number);
  return { width, height };
}

/** The engine's drawing, as a part of another. */
function PlanDrawing({ drawing }: { drawing: SVGSVGElement }) {
  const place = useRef<SVGGElement>(null);
  useLayoutEffect(() => place.current?.replaceChildren(drawing.cloneNode(true)), [drawing]);
  return <g ref={place} />;
}

/** The address of an image in this page, as long as it is shown. */
function useAddress(image: PlanImage | undefined): string | undefined {
  const [address, setAddress] = useState<string | undefined>(undefined);
  const bytes = image?.bytes;
  useEffect(() => {
    if (!bytes) {
      setAddress(undefined);
      return undefined;
    }
    const made = URL.createObjectURL(new Blob([bytes], { type: image?.type ?? '' }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return address;
}

/** The image kept for this plan, and what changes it; each change is on the device before it is shown. */
function useKeptImage(keys: readonly [string, string]) {
  const [key, before] = keys;
  const [image, setImage] = useState<PlanImage | undefined>(undefined);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    let wanted = true;
    planImage(key)
      // An example becomes a record of its own with the first change; its image goes along.
      .then((kept) => kept ?? planImage(before))
      .then(
        (kept) => {
          if (wanted) setImage(kept);
        },
        () => setTrouble(words.notKept),
      );
    return () => {
      wanted = false;
    };
  }, [key, before]);
  const keep = async (next: PlanImage | undefined) => {
    try {
      if (next) await keepPlanImage(key, next);
      else await Promise.all(keys.map(dropPlanImage));
      setTrouble('');
      setImage(next);
    } catch {
      setTrouble(words.notKept);
    }
  };
  const refuse = (why: PlanImageRefusal) => setTrouble(words.refusals[why]);
  return { image, trouble, keep, refuse };
}

/** Before anybody has placed it, the image lies across the middle of the plan. */
function firstPoints(
  image: Size,
  whole: Size,
  picture: PlacedPicture,
): [ControlPoint, ControlPoint] {
  const at = (share: number): ControlPoint => ({
    image: { x: image.width * share, y: image.height / 2 },
    ground: onGround(picture.frame, { x: whole.width * share, y: whole.height / 2 }),
  });
  return [at(0.2), at(0.8)];
}

const letters = ['A', 'B'] as const;

function PlacingPanes({
  image,
  address,
  picture,
  drawing,
  whole,
  onChange,
}: {
  image: PlanImage;
  address: string | undefined;
  picture: PlacedPicture;
  drawing: SVGSVGElement;
  whole: Size;
  onChange: (points: [ControlPoint, ControlPoint]) => void;
}) {
  const [chosen, setChosen] = useState<0 | 1>(0);
  const change = (what: Partial<ControlPoint>) => {
    const next: [ControlPoint, ControlPoint] = [...image.points];
    next[chosen] = { ...next[chosen], ...what };
    onChange(next);
  };
  const added = (one: Point, by: Point) => ({ x: one.x + by.x, y: one.y + by.y });
  const stands = image.points[chosen];
  const onPlan = onPicture(picture.frame, stands.ground);
  const markers = (place: (point: ControlPoint) => Point) =>
    image.points.map((point, index) => ({
      name: letters[index] ?? '',
      at: place(point),
      chosen: index === chosen,
    }));
  return (
    <section class="plan-placing">
      <h2>{words.place}</h2>
      <p class="help">{words.placeHow}</p>
      <fieldset class="study-proposals">
        <legend>{words.whichPoint}</legend>
        {letters.map((letter, index) => (
          <label key={letter}>
            <input
              type="radio"
              name="control-point"
              checked={index === chosen}
              onChange={() => setChosen(index as 0 | 1)}
            />
            {words.point(letter)}
          </label>
        ))}
      </fieldset>
      <div class="plan-panes">
        <div>
          <h3>{words.onImage}</h3>
          <MapView
            label={words.onImage}
            whole={image}
            markers={markers(({ image: at }) => at)}
            onPick={(at) => change({ image: at })}
            onNudge={(by) => change({ image: added(stands.image, by) })}
          >
            {address && <image href={address} width={image.width} height={image.height} />}
          </MapView>
        </div>
        <div>
          <h3>{words.onPlan}</h3>
          <MapView
            label={words.onPlan}
            whole={whole}
            markers={markers(({ ground }) => onPicture(picture.frame, ground))}
            onPick={(at) => change({ ground: onGround(picture.frame, at) })}
            onNudge={(by) => change({ ground: onGround(picture.frame, added(onPlan, by)) })}
          >
            <PlanDrawing drawing={drawing} />
          </MapView>
        </div>
      </div>
    </section>
  );
}

function PlanOverImage({
  picture,
  keys,
}: {
  picture: PlacedPicture;
  keys: readonly [string, string];
}) {
  const picker = useRef<HTMLInputElement>(null);
  const { image, trouble, keep, refuse } = useKeptImage(keys);
  const address = useAddress(image);
  const drawing = useMemo(() => drawingOf(picture.svg), [picture.svg]);
  const taking = useRef<(file: File) => void>(() => undefined);
  useEffect(() => {
    fileTaker.value = {
      words: words.dropHere,
      takes: /\.(png|jpe?g)$/i,
      take: (file) => taking.current(file),
    };
    return () => {
      fileTaker.value = undefined;
    };
  }, []);
  if (!drawing) return <p>{strings.pictures.notDrawable}</p>;
  const whole = sizeOf(drawing);
  taking.current = (file) => {
    void readPlanImage(file).then((read) => {
      if (typeof read === 'string') refuse(read);
      else void keep({ ...read, points: firstPoints(read, whole, picture), strength: 0.7 });
    });
  };
  const matrix = image && placed(image.points, picture.frame);
  return (
    <>
      <MapView label={words.over(picture.title)} whole={whole}>
        {image && address && matrix && (
          <image
            href={address}
            width={image.width}
            height={image.height}
            opacity={image.strength}
            transform={`matrix(${matrix.join(' ')})`}
          />
        )}
        <PlanDrawing drawing={drawing} />
      </MapView>
      <p>
        <EngineText text={picture.description} />
      </p>
      <div class="form-bar">
        <button type="button" class="button" onClick={() => picker.current?.click()}>
          {image ? words.other : words.choose}
        </button>
        <input
          ref={picker}
          type="file"
          data-picks="plan-image"
          accept="image/png,image/jpeg"
          hidden
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) taking.current(file);
            currentTarget.value = '';
          }}
        />
        {image && (
          <button type="button" class="button quiet" onClick={() => void keep(undefined)}>
            {words.remove}
          </button>
        )}
        {image && (
          <label class="plan-strength">
            <span>{words.strength}</span>
            <input
              type="range"
              min="0.1"
              max="1"
              step="0.1"
              value={image.strength}
              onChange={({ currentTarget }) =>
                void keep({ ...image, strength: Number(currentTarget.value) })
              }
            />
          </label>
        )}
        <span role="status">{trouble || (image ? words.kept(image.name) : words.drop)}</span>
      </div>
      {image && !matrix && <p class="wrong">{words.onePoint}</p>}
      {image && (
        <PlacingPanes
          image={image}
          address={address}
          picture={picture}
          drawing={drawing}
          whole={whole}
          onChange={(points) => void keep({ ...image, points })}
        />
      )}
    </>
  );
}

export function PlanStudy({ id, centreline }: { id: string; centreline: Record<string, unknown> }) {
  const shown = view.value;
  const pictures = shown.state === 'findings' ? shown.pictures : [];
  const picture = pictures.find((one) => one.id === `plan.${id}`);
  const name = nameOfItem(id, centreline);
  const site = openedSite.value;
  return (
    <StudyFrame
      heading={words.heading(name)}
      help={words.help}
      back={{ part: 'centrelines', id, name }}
    >
      {picture?.frame ? (
        <PlanOverImage
          picture={{ ...picture, frame: picture.frame }}
          keys={[`${site?.kept ?? site?.label ?? ''}.${id}`, `${site?.label ?? ''}.${id}`]}
        />
      ) : (
        <p>{words.none}</p>
      )}
    </StudyFrame>
  );
}
