/** Outlines that were found are looked at, one under each node: right, otherwise, hidden or no rock. */
import { EngineText } from '../engine_text';
import { useState } from 'preact/hooks';
import { failureFrom } from '../engine';
import type { Finding } from '../findings';
import { OutcomeMark } from '../outcome_mark';
import { photoWords as words, strings } from '../strings';
import { useKeptPicture } from './kept_picture';
import type { Measured, MeasuredPhoto, NodeFinding, NodeWord, PhotoTap } from './photo_draft';
import { pictureOf } from './photo_look';
import { paintEnds, paintLooked, stoneAt } from './photo_paint';
import { PhotoPane } from './photo_pane';
import { useTappedEnds } from './tapped_ends';
import { vision } from './vision';

/** So much of the shorter side is shown about a node. */
const partShown = 0.5;

export interface CheckStepProps {
  now: Measured;
  lies: string;
  /** What the engine says of the check so far. */
  said: Finding | undefined;
  onTap: (tap: PhotoTap) => Promise<boolean>;
}

function BeginCheck({ now, lies, onTap }: CheckStepProps) {
  const [trouble, setTrouble] = useState('');
  const begin = async () => {
    setTrouble('');
    try {
      const answer = await vision.checkNodes(lies, now.photos.map(pictureOf));
      const nodes = 'nodes' in answer ? answer.nodes : [];
      const check = nodes.flatMap(({ picture, at }) => {
        const of = now.photos[picture - 1]?.taken.file;
        return of === undefined ? [] : [{ of, at }];
      });
      if (check.length > 0) await onTap({ check });
      else setTrouble(words.check.nothing);
    } catch (error) {
      setTrouble(strings.failures.sentences[failureFrom(error).kind]);
    }
  };
  return (
    <>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      <button type="button" class="button quiet action" onClick={() => void begin()}>
        {now.check ? words.check.anew : words.check.begin}
      </button>
    </>
  );
}

/** The first node whose outline nobody has looked at. */
function openNode({ photos, check }: Measured) {
  for (const [number, { of, at }] of (check?.nodes ?? []).entries()) {
    const index = photos.findIndex(({ taken }) => taken.file === of);
    const photo = photos[index];
    const outline = photo && stoneAt(photo.outlines, at);
    if (!photo || outline === undefined || check?.findings.has(number)) continue;
    return { number, at, photo, photoNumber: index + 1, outline };
  }
  return undefined;
}

type OpenNode = NonNullable<ReturnType<typeof openNode>>;

function LookAt({ node, onTap }: { node: OpenNode; onTap: CheckStepProps['onTap'] }) {
  const { number, at, photo, photoNumber, outline } = node;
  const { taken, outlines }: MeasuredPhoto = photo;
  const kept = useKeptPicture(taken.file, Math.max(taken.width, taken.height));
  const say = (finding: NodeFinding) =>
    void onTap({ checked: number, outline, finding }).then((done) => {
      if (done) tapped.clear();
    });
  const tapped = useTappedEnds(say);
  const { ends } = tapped;
  const hint = ends.length === 0 ? words.check.look : (words.ends[ends.length] ?? '');
  const answers = Object.keys(words.check.answers) as NodeWord[];
  return (
    <>
      <p class="pane-hint">{hint}</p>
      <PhotoPane
        image={typeof kept === 'object' ? kept : undefined}
        photo={taken}
        painted={[number, ends, outlines]}
        focus={{ at, across: partShown * Math.min(taken.width, taken.height) }}
        tool={{
          label: words.picture(photoNumber, hint),
          handles: ends,
          onHandle: tapped.move,
          onTap: tapped.tap,
        }}
        paint={(context, pixel) => {
          paintLooked(context, pixel, outlines[outline], at);
          paintEnds(context, pixel, ends);
        }}
      />
      <div class="photo-tools">
        {answers.map((answer) => (
          <button key={answer} type="button" class="button quiet" onClick={() => say(answer)}>
            {words.check.answers[answer]}
          </button>
        ))}
        {ends.length > 0 && (
          <button type="button" class="button quiet" onClick={tapped.back}>
            {words.tapBack}
          </button>
        )}
      </div>
    </>
  );
}

export function CheckStep(props: CheckStepProps) {
  const { now, said, onTap } = props;
  const { check } = now;
  const node = openNode(now);
  return (
    <>
      {!check && <p>{words.check.what}</p>}
      {check && (
        <p class="stones-so-far" role="status">
          {words.check.done(check.findings.size, check.nodes.length)}
        </p>
      )}
      {node && <LookAt node={node} onTap={onTap} />}
      {check && check.findings.size > 0 && (
        <button type="button" class="button quiet" onClick={() => void onTap({ uncheck: true })}>
          {words.check.back}
        </button>
      )}
      {said && (
        <div class="live-words" role="status">
          <OutcomeMark outcome={said.outcome} size={32} />
          <p>
            <b>{strings.outcomes[said.outcome]}</b>{' '}
            <span class="sentence">
              <EngineText text={said.sentence} />
            </span>{' '}
            <span class="sentence">
              <EngineText text={said.next} />
            </span>
          </p>
        </div>
      )}
      {!node && <BeginCheck {...props} />}
    </>
  );
}
