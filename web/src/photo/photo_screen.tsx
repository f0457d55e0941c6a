/** Rock measured on photos: taken, scaled, outlined or tapped, mended, and kept as a look. */
import { useState } from 'preact/hooks';
import './photo.css';
import { failureFrom } from '../engine';
import type { Problem } from '../findings';
import { useBegunDraft } from '../field/begun_draft';
import { PictureFigure } from '../picture';
import { addressOf, go } from '../places';
import { ProblemLines } from '../problem_list';
import type { Draft } from '../record/record_database';
import { RecordFailure } from '../record/record_access';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { BeginPhoto, PhotoGuide } from './begin_photo';
import { useKeptPicture } from './kept_picture';
import { statedEdges } from './board_edges';
import { CheckStep } from './check_step';
import { LargestStep } from './largest_step';
import { DropDraft } from './drop_draft';
import { LengthField } from './length_field';
import { LiveWords } from './live_words';
import { NodesStep } from './nodes_step';
import { OutlinesStep } from './outlines_step';
import type { Measured, MeasuredPhoto, PhotoDraft, PhotoTap } from './photo_draft';
import { finish, useMeasuring } from './photo_measuring';
import { photoWords as words } from '../strings';
import { ScaleStep } from './scale_step';
import { Switch } from './switch_of';
import { TakePhoto } from './take_photo';

type StepName = 'scale' | 'stones' | 'largest' | 'check';

function OnePhoto({
  photo,
  number,
  step,
  now,
  lies,
  onTap,
}: {
  photo: MeasuredPhoto;
  number: number;
  step: StepName;
  now: Measured;
  lies: string;
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
          lies={lies}
          edges={(board) => statedEdges(siteState.value.looks, now.photos, board)}
          label={words.picture(number, words.steps.scale)}
          onScale={(scale) => onTap({ of: file, scale })}
        />
      ) : step === 'largest' ? (
        <LargestStep {...shared} largest={now.largestEnds} onTap={onTap} />
      ) : photo.taken.found ? (
        <OutlinesStep {...shared} onTap={put} />
      ) : (
        <NodesStep {...shared} onTap={onTap} />
      )}
    </>
  );
}

function Measuring({ draft }: { draft: Draft }) {
  const { lot, look, by, lies } = draft.about as PhotoDraft;
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
  // Stones that somebody tapped are looked at already.
  const steps: StepName[] = [
    'scale',
    'stones',
    'largest',
    ...(by === 'taps' ? [] : ['check' as const]),
  ];
  const checked = answer?.findings?.findings.find(
    ({ id }) => id === `outline-check.${lot}.${look}`,
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
        {photos.length > 1 && step !== 'check' && (
          <Switch
            label={words.photos}
            names={photos.map((_, value) => ({ value, label: words.photo(value + 1) }))}
            value={at}
            onValue={setShown}
          />
        )}
        <Switch
          label={words.step}
          names={steps.map((value) => ({ value, label: words.steps[value] }))}
          value={step}
          onValue={setStep}
        />
        {step === 'check' ? (
          <CheckStep now={now} lies={lies} said={checked} onTap={tap} />
        ) : (
          <OnePhoto
            key={photo.taken.file}
            photo={photo}
            number={at + 1}
            step={step}
            now={now}
            lies={lies}
            onTap={tap}
          />
        )}
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
