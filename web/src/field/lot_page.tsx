/** One lot: what is known of its rock, and what can be done about it now. */
import { EngineText, WrittenInEnglish } from '../engine_text';
import { usePortion } from '../more_button';
import { OutcomeMark } from '../outcome_mark';
import { PhotoStrip } from '../photo_strip';
import { addressOf, type LotTask } from '../places';
import { pointerTo } from '../record/revision';
import { view } from '../site_assessment';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { useBegunDraft } from './begun_draft';
import { verdictOf } from './field_home';
import { PositionLine } from './position_line';
import { OpenProblems } from './problem_forms';

const words = strings.field;

function Action({
  lot,
  task,
  label,
  main,
}: {
  lot: string;
  task: LotTask;
  label: string;
  main: boolean;
}) {
  return (
    <a
      class={main ? 'button action main' : 'button action quiet'}
      href={addressOf({ at: 'lot', lot, task })}
    >
      {label}
    </a>
  );
}

/** So many looks are listed at a time, the last ones first. */
const portion = 30;

export function LotPage({ lot }: { lot: string }) {
  const { draft: begun } = useBegunDraft(lot, 'stone count');
  const { draft: photos } = useBegunDraft(lot, 'photo');
  const { lots = {}, looks = {}, loads = {} } = siteState.value;
  const looksHere = Object.entries(looks).filter(([, look]) => look.lot === lot);
  const { shown: shownLooks, more } = usePortion(looksHere, portion, { last: true });
  const name = lots[lot]?.name;
  const shown = view.value;
  const verdict = shown.state === 'findings' ? verdictOf(shown.findings.findings, lot) : undefined;
  if (name === undefined) {
    return (
      <section class="field">
        <p>{words.noSuchLot}</p>
        <a class="button quiet action" href={addressOf({ at: 'field' })}>
          {words.back}
        </a>
      </section>
    );
  }
  const loadsHere = Object.values(loads).filter((load) => load.lot === lot);
  return (
    <section class="field" aria-labelledby="lot-heading">
      <p>
        <a href={addressOf({ at: 'field' })}>{words.back}</a>
      </p>
      <h1 id="lot-heading">{name}</h1>
      <div class="lot-verdict">
        <OutcomeMark outcome={verdict?.outcome ?? 'not yet known'} size={40} />
        <p>
          <b>{verdict ? strings.outcomes[verdict.outcome] : words.noLook}</b>
          {verdict && (
            <span class="sentence">
              <EngineText text={verdict.sentence} />
            </span>
          )}
        </p>
      </div>
      {verdict?.next && (
        <p class="next-step">
          <EngineText text={verdict.next} />
        </p>
      )}
      <WrittenInEnglish />
      <nav class="actions" aria-label={words.actions}>
        <Action
          lot={lot}
          task="count"
          label={begun ? words.goOnCounting : words.count}
          main={true}
        />
        <Action
          lot={lot}
          task="photo"
          label={photos ? words.goOnPhotos : words.photo}
          main={false}
        />
        <Action lot={lot} task="quick-look" label={words.quickLook} main={false} />
        <Action lot={lot} task="weigh" label={words.weigh} main={false} />
        <Action lot={lot} task="load" label={words.load} main={false} />
        <Action lot={lot} task="problem" label={words.problem} main={false} />
      </nav>
      <p>
        <a href={addressOf({ at: 'help', page: 'field' })}>{strings.help.inTheField}</a>
      </p>
      <OpenProblems about={(problem) => problem.lot === lot} />
      <h2>{words.soFar}</h2>
      <p>
        {looksHere.length + loadsHere.length === 0
          ? words.nothingYet
          : words.taken(looksHere.length, loadsHere.length)}
      </p>
      {more}
      <ul class="taken">
        {shownLooks.map(([id, look]) => (
          <li key={id}>
            {look.name}
            {look.when && <span class="line">{words.seen(look.when, look.who ?? '')}</span>}
            <PositionLine position={look.position} pointer={pointerTo('looks', id, 'position')} />
            <PhotoStrip hashes={look.photos ?? []} />
          </li>
        ))}
      </ul>
    </section>
  );
}
