/** Rock measured on photos: taken, scaled, outlined or tapped, mended, and kept as a look. */
import { useState } from 'preact/hooks';
import './photo.css';
import { failureFrom } from '../engine';
import type { AssessAnswer, Problem } from '../findings';
import { useBegunDraft } from '../field/begun_draft';
import { OutcomeMark } from '../outcome_mark';
import { PictureFigure } from '../picture';
import { addressOf, go } from '../places';
import { ProblemLines } from '../problem_list';
import type { Draft } from '../record/record_database';
import { dropDraft } from '../record/drafts';
import { RecordFailure } from '../record/record_access';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { BeginPhoto, PhotoGuide } from './begin_photo';
import { useKeptPicture } from './kept_picture';
import { LengthField } from './length_field';
import { NodesStep } from './nodes_step';
import { OutlinesStep } from './outlines_step';
import type { MeasuredPhoto, PhotoDraft, PhotoTap } from './photo_draft';
import { finish, useMeasuring } from './photo_measuring';
import { photoWords as words } from '../strings';
import { ScaleStep } from './scale_step';
import { TakePhoto } from './take_photo';

/** What the engine says of the photos so far. */
function LiveWords({ draft, answer }: { draft: Draft; answer: AssessAnswer | undefined }) {
  const { lot, look } = draft.about as PhotoDraft;
  const findings = answer?.findings?.findings ?? [];
  const together = findings.find(({ id }) => id === `gradation.${lot}`);
  const alone = findings.find(({ id }) => id === `gradation.${lot}.${look}`);
  const said = alone ?? together;
  const cautions = said?.cautions ?? [];
  return (
    <>
      <div class="live-words" role="status">
        {said ? (
          <>
            <OutcomeMark outcome={said.outcome} size={32} />
            <p>
              <b>{strings.outcomes[said.outcome]}</b>{' '}
              <span class="sentence" {...strings.asWritten}>
                {said.sentence}
              </span>{' '}
              <span class="sentence" {...strings.asWritten}>
                {said.next || together?.next}
              </span>
            </p>
          </>
        ) : answer?.problems?.length ? (
          <ProblemLines problems={answer.problems} />
        ) : (
          <p>{words.waiting}</p>
        )}
      </div>
      {cautions.length > 0 && (
        <details class="photo-guide">
          <summary>{words.mind}</summary>
          <ul>
            {cautions.map((caution) => (
              <li key={caution} {...strings.asWritten}>
                {caution}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

type StepName = 'scale' | 'stones';

function OnePhoto({
  photo,
  number,
  step,
  onTap,
}: {
  photo: MeasuredPhoto;
  number: number;
  step: StepName;
  onTap: (tap: PhotoTap) => Promise<boolean>;
}) {
  const { file, width, height } = photo.taken;
  const picture = useKeptPicture(file, Math.max(width, height));
  const shared = { photo, number, image: typeof picture === 'object' ? picture : undefined };
  const put = (tap: PhotoTap) => void onTap(tap);
  return (
    <>
      {picture === 'elsewhere' && <p class="trouble">{words.elsewhere}</p>}
      {step === 'scale' ? (
        <ScaleStep
          {...shared}
          label={words.picture(number, words.steps.scale)}
          onScale={(scale) => onTap({ of: file, scale })}
        />
      ) : photo.taken.found ? (
        <OutlinesStep {...shared} onTap={put} />
      ) : (
        <NodesStep {...shared} onTap={onTap} />
      )}
    </>
  );
}

/** One button of several of which one holds. */
function Switch<Name extends string | number>({
  label,
  names,
  value,
  onValue,
}: {
  label: string;
  names: { value: Name; label: string }[];
  value: Name;
  onValue: (value: Name) => void;
}) {
  return (
    <div class="photo-tools" role="group" aria-label={label}>
      {names.map((one) => (
        <button
          key={one.value}
          type="button"
          class="button quiet"
          aria-pressed={one.value === value}
          onClick={() => onValue(one.value)}
        >
          {one.label}
        </button>
      ))}
    </div>
  );
}

function DropDraft({ draft, photos, leave }: { draft: Draft; photos: number; leave: () => void }) {
  const [asks, setAsks] = useState(false);
  if (!asks) {
    return (
      <button type="button" class="button quiet drop" onClick={() => setAsks(true)}>
        {words.drop}
      </button>
    );
  }
  return (
    <div class="drop-draft">
      <p>{words.dropWhat(photos)}</p>
      <button
        type="button"
        class="button quiet"
        // `recordTrouble` says why it could not be thrown away; nothing was changed.
        onClick={() => void dropDraft(draft.id).then(leave, () => undefined)}
      >
        {words.dropYes}
      </button>
      <button type="button" class="button" onClick={() => setAsks(false)}>
        {words.dropNo}
      </button>
    </div>
  );
}

function Measuring({ draft }: { draft: Draft }) {
  const { lot, by } = draft.about as PhotoDraft;
  const { now, answer, tap, trouble } = useMeasuring(draft);
  const [shown, setShown] = useState(0);
  const [step, setStep] = useState<StepName>('scale');
  const [problems, setProblems] = useState<Problem[]>([]);
  const [notKept, setNotKept] = useState('');
  if (!now) return <p role="status">{strings.count.preparing}</p>;
  const { photos, largest } = now;
  const at = Math.min(shown, photos.length - 1);
  const photo = photos[at];
  const leave = () => go({ at: 'lot', lot });
  const keep = () =>
    finish(draft).then(
      (found) => {
        setProblems(found);
        if (found.length === 0) leave();
      },
      (error: unknown) =>
        setNotKept(
          error instanceof RecordFailure
            ? strings.record.troubles[error.trouble]
            : strings.failures.sentences[failureFrom(error).kind],
        ),
    );
  const picture = answer?.pictures?.find(({ kind }) => kind === 'gradation');
  const taking = (
    <TakePhoto
      by={by}
      known={photos.map(({ taken }) => taken.file)}
      first={photo === undefined}
      onTaken={(add) => tap({ add }).then(() => setShown(photos.length))}
    />
  );
  if (!photo) {
    return (
      <>
        <PhotoGuide open />
        {taking}
        <DropDraft draft={draft} photos={0} leave={leave} />
      </>
    );
  }
  return (
    <div class="photo-measuring">
      <div class="photo-work">
        {photos.length > 1 && (
          <Switch
            label={words.photos}
            names={photos.map((_, value) => ({ value, label: words.photo(value + 1) }))}
            value={at}
            onValue={setShown}
          />
        )}
        <Switch
          label={words.step}
          names={[
            { value: 'scale', label: words.steps.scale },
            { value: 'stones', label: words.steps.stones },
          ]}
          value={step}
          onValue={setStep}
        />
        <OnePhoto key={photo.taken.file} photo={photo} number={at + 1} step={step} onTap={tap} />
      </div>
      <div class="photo-said">
        <LiveWords draft={draft} answer={answer} />
        {trouble && (
          <p class="trouble" role="alert">
            {trouble}
          </p>
        )}
        {picture && (
          <div class="live">
            <PictureFigure picture={picture} />
          </div>
        )}
        <LengthField
          label={words.largest}
          value={largest}
          onValue={(text) => void tap({ largest: text })}
        />
        {taking}
        {(problems.length > 0 || notKept) && (
          <div class="form-problems" role="alert">
            <p>{notKept || words.notKept}</p>
            <ProblemLines problems={problems} />
          </div>
        )}
        <div class="count-bar">
          <button
            type="button"
            class="button quiet"
            disabled={photo.steps === 0}
            onClick={() => void tap({ of: photo.taken.file, undo: true })}
          >
            {words.undo}
          </button>
          <button type="button" class="button" onClick={() => void keep()}>
            {words.keep}
          </button>
        </div>
        <button
          type="button"
          class="button quiet"
          onClick={() => void tap({ leave: photo.taken.file })}
        >
          {words.leaveOut}
        </button>
        <DropDraft draft={draft} photos={photos.length} leave={leave} />
      </div>
    </div>
  );
}

export function PhotoScreen({ lot }: { lot: string }) {
  const begun = useBegunDraft(lot, 'photo');
  const [fresh, setFresh] = useState<Draft | undefined>(undefined);
  const draft = fresh ?? begun.draft;
  return (
    <section class="field photo-screen" aria-labelledby="photo-heading">
      <p>
        <a href={addressOf({ at: 'lot', lot })}>{strings.field.backToLot}</a>
      </p>
      <h1 id="photo-heading">{words.heading(siteState.value.lots?.[lot]?.name ?? '')}</h1>
      {draft ? (
        <Measuring draft={draft} />
      ) : begun.known ? (
        <BeginPhoto lot={lot} onBegun={setFresh} />
      ) : (
        <p role="status">{strings.count.preparing}</p>
      )}
    </section>
  );
}
