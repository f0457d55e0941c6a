/** A stone count, stone by stone: each tap is on the device before its number changes. */
import { EngineText } from '../engine_text';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AssessAnswer } from '../findings';
import { PictureFigure } from '../picture';
import { addressOf, go } from '../places';
import type { Draft, Tap } from '../record/record_database';
import { type Change, pointerTo } from '../record/revision';
import { dropDraft, keepTap } from '../record/drafts';
import { recordDatabase } from '../record/record_access';
import { change, openedSite } from '../record/site_record';
import { units } from '../settings';
import { pictureWidth } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { AxisEntry } from './axis_entry';
import { useBegunDraft } from './begun_draft';
import { Beginning, type CountDraft, sentenceOf } from './begin_count';
import { type CountTap, type Stone, stonesField, stonesIn } from './count_tally';
import { LiveLot } from './live_lot';
import { observer } from './observer';
import { OutcomeMark } from '../outcome_mark';

const words = strings.count;

/** The look that the stones make; nothing before the first stone. */
function lookOf(draft: Draft, stones: readonly Stone[]): Change[] {
  const about = draft.about as CountDraft;
  const taken = stonesField(about.bins, stones);
  if (!taken) return [];
  return [
    {
      set: pointerTo('looks', about.look),
      to: {
        name: about.place ? words.nameAt(about.place) : words.name,
        kind: 'stone count',
        lot: about.lot,
        picking: about.picking,
        when: draft.begun,
        ...observer(),
        ...(about.position ? { position: about.position } : {}),
        ...(about.place ? { where: about.place } : {}),
        stones: taken,
      },
    },
  ];
}

async function keptTaps(draft: Draft): Promise<Tap[]> {
  return (await recordDatabase()).taps(draft.id);
}

/** Puts every stone that is on the device into the record, whichever window counted it. */
async function finish(draft: Draft): Promise<void> {
  const stones = stonesIn(await keptTaps(draft));
  await change(lookOf(draft, stones), words.note(stones.length), { done: draft.id });
}

/** The stones of a draft, and what the engine says of them. */
function useCount(draft: Draft) {
  const [stones, setStones] = useState<Stone[] | undefined>(undefined);
  const [answer, setAnswer] = useState<AssessAnswer | undefined>(undefined);
  const taps = useRef<{ what: unknown }[]>([]);
  const live = useRef<LiveLot | undefined>(undefined);
  const { lot } = draft.about as CountDraft;

  useEffect(() => {
    live.current = new LiveLot(setAnswer);
    void keptTaps(draft).then((kept) => {
      taps.current = kept;
      setStones(stonesIn(kept));
    });
    return () => live.current?.stop();
  }, [draft.id]);

  useEffect(() => {
    const site = openedSite.value;
    const changes = stones ? lookOf(draft, stones) : [];
    if (!site || changes.length === 0) {
      setAnswer(undefined);
      return;
    }
    live.current?.ask({ site, lot, changes, units: units.value, width: pictureWidth.value });
  }, [stones, units.value, pictureWidth.value, openedSite.value]);

  const tap = async (what: CountTap) => {
    const kept = await keepTap(draft.id, what);
    // Another window may count along: then its taps are read as well.
    const alone = kept.number === taps.current.length;
    taps.current = alone ? [...taps.current, kept] : await keptTaps(draft);
    setStones(stonesIn(taps.current));
  };
  return { stones: stones ?? [], ready: stones !== undefined, answer, tap };
}

/** What the engine says of the count so far. */
function LiveWords({
  draft,
  answer,
  stones,
}: {
  draft: Draft;
  answer: AssessAnswer | undefined;
  stones: number;
}) {
  const { lot, look, by } = draft.about as CountDraft;
  const findings = answer?.findings?.findings ?? [];
  const decision =
    findings.find(({ id }) => id === `count.${lot}.${look}`) ??
    findings.find(({ id }) => id === `gradation.${lot}.${look}`);
  return (
    <div class="live-words" role="status">
      {decision ? (
        <>
          <OutcomeMark outcome={decision.outcome} size={32} />
          <p>
            <b>{strings.outcomes[decision.outcome]}</b>{' '}
            <span class="sentence">
              <EngineText text={decision.sentence} />
            </span>{' '}
            <span class="sentence">
              <EngineText text={decision.next} />
            </span>
          </p>
        </>
      ) : (
        <p>{stones > 0 ? words.more : by === 'axes' ? words.measureFirst : words.tapFirst}</p>
      )}
    </div>
  );
}

function Counting({ draft }: { draft: Draft }) {
  const { lot, bins, by = 'bins' } = draft.about as CountDraft;
  const { stones, ready, answer, tap } = useCount(draft);
  const [trouble, setTrouble] = useState('');
  const [asksToDrop, setAsksToDrop] = useState(false);
  const picture = answer?.pictures?.find(({ kind }) => kind === 'gradation');
  const count = (index: number) =>
    stones.filter((stone) => 'bin' in stone && stone.bin === index).length;
  const guarded = (work: () => Promise<unknown>) => {
    work().then(
      () => setTrouble(''),
      (error: unknown) => setTrouble(sentenceOf(error)),
    );
  };
  const leave = () => go({ at: 'lot', lot });
  return (
    <>
      <p class="stones-so-far" aria-live="polite">
        <b>{stones.length}</b> {words.stones(stones.length)}
      </p>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      <LiveWords draft={draft} answer={answer} stones={stones.length} />
      {by === 'axes' ? (
        <AxisEntry
          ready={ready}
          last={stones.flatMap((stone) => ('axis' in stone ? [stone.axis] : []))}
          onAxis={(axis) => guarded(() => tap({ axis }))}
        />
      ) : (
        <div class="bins" role="group" aria-label={words.binsLabel}>
          {bins.map((bin, index) => (
            <button
              type="button"
              class="bin"
              key={bin.text}
              disabled={!ready}
              onClick={() => guarded(() => tap({ bin: index }))}
            >
              <span class="size">{words.bin(bin.text)}</span>{' '}
              <span class="number">{count(index)}</span>
            </button>
          ))}
        </div>
      )}
      <div class="count-bar">
        <button
          type="button"
          class="button quiet"
          disabled={stones.length === 0}
          onClick={() => guarded(() => tap({ undo: true }))}
        >
          {words.undo}
        </button>
        <button
          type="button"
          class="button"
          disabled={stones.length === 0}
          onClick={() => guarded(() => finish(draft).then(leave))}
        >
          {words.finish}
        </button>
      </div>
      {picture && (
        <div class="live">
          <PictureFigure picture={picture} />
        </div>
      )}
      {asksToDrop ? (
        <div class="drop-draft">
          <p>{words.dropWhat(stones.length)}</p>
          <button
            type="button"
            class="button quiet"
            onClick={() => guarded(() => dropDraft(draft.id).then(leave))}
          >
            {words.dropYes}
          </button>
          <button type="button" class="button" onClick={() => setAsksToDrop(false)}>
            {words.dropNo}
          </button>
        </div>
      ) : (
        <button type="button" class="button quiet drop" onClick={() => setAsksToDrop(true)}>
          {words.drop}
        </button>
      )}
    </>
  );
}

export function CountScreen({ lot }: { lot: string }) {
  const begun = useBegunDraft(lot, 'stone count');
  const [fresh, setFresh] = useState<Draft | undefined>(undefined);
  const draft = fresh ?? begun.draft;
  return (
    <section class="field" aria-labelledby="count-heading">
      <p>
        <a href={addressOf({ at: 'lot', lot })}>{strings.field.backToLot}</a>
      </p>
      <h1 id="count-heading">{words.heading(siteState.value.lots?.[lot]?.name ?? '')}</h1>
      {draft ? (
        <Counting draft={draft} />
      ) : begun.known ? (
        <Beginning lot={lot} onBegun={setFresh} />
      ) : (
        <p role="status">{words.preparing}</p>
      )}
    </section>
  );
}
