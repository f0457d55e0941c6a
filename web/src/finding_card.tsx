/** One finding as a disclosure: the outcome at a glance, and everything needed to question it. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { AsWritten } from './as_written';
import { findingAddress, findingElementId } from './deep_link';
import { engineText, EngineText } from './engine_text';
import type { Finding, Limit, Source, StatedValue, Step } from './findings';
import { MarginBar } from './margin_bar';
import { OutcomeMark } from './outcome_mark';
import { addressOf } from './places';
import { strings } from './strings';
import { type CopiedCell, CopyTable } from './table_copy';

const words = strings.card;

function Part({ heading, children }: { heading: string; children: ComponentChildren }) {
  return (
    <section class="part">
      <h5>{heading}</h5>
      {children}
    </section>
  );
}

function Sentences({ sentences }: { sentences: string[] }) {
  return (
    <ul class="sentences">
      {sentences.map((sentence) => (
        <li>
          <EngineText text={sentence} />
        </li>
      ))}
    </ul>
  );
}

function Values({ values }: { values: StatedValue[] }) {
  return (
    <table class="values">
      <thead class="for-readers">
        <tr>
          <th scope="col">{words.meaning}</th>
          <th scope="col">{words.symbol}</th>
          <th scope="col">{words.value}</th>
        </tr>
      </thead>
      <tbody>
        {values.map((value) => (
          <tr key={value.key} data-si={value.si}>
            <th scope="row">
              <EngineText text={value.meaning} of="meaning" />
            </th>
            <td class="symbol">{value.symbol}</td>
            <td class="amount">{value.text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Numbers and units in cells of their own. */
function valueRows(values: readonly StatedValue[]): CopiedCell[][] {
  return [
    [words.meaning, words.symbol, words.value, words.unit],
    ...values.map(({ meaning, symbol, value, unit }) => [
      engineText(meaning, 'meaning'),
      symbol,
      value,
      unit,
    ]),
  ];
}

function stepRows(steps: readonly Step[]): CopiedCell[][] {
  return [
    [words.symbol, words.meaning, words.value, words.unit, words.formula, words.source],
    ...steps.map(({ symbol, meaning, value, unit, formula, source }) => [
      symbol,
      engineText(meaning, 'meaning'),
      value,
      unit,
      formula,
      engineText(source, 'origin'),
    ]),
  ];
}

/** A table for readers and screen readers; on screen each row is a block, like a written sheet. */
function StepsTable({ steps }: { steps: Step[] }) {
  return (
    <table class="steps" role="table">
      <thead class="for-readers" role="rowgroup">
        <tr role="row">
          <th role="columnheader">{words.symbol}</th>
          <th role="columnheader">{words.meaning}</th>
          <th role="columnheader">{words.value}</th>
          <th role="columnheader">{words.formula}</th>
          <th role="columnheader">{words.source}</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {steps.map((step) => (
          <tr role="row" data-si={step.si}>
            {step.symbol ? (
              <th role="rowheader" class="symbol">
                {step.symbol}
              </th>
            ) : (
              <td role="cell" class="symbol"></td>
            )}
            <td role="cell" class="meaning">
              <EngineText text={step.meaning} of="meaning" />
            </td>
            <td role="cell" class="amount">
              {step.text}
            </td>
            <td role="cell" class="formula">
              {step.formula && `= ${step.formula}`}
            </td>
            <td role="cell" class="origin">
              {step.formula ? (
                <EngineText text={step.source} of="origin" />
              ) : (
                words.given(engineText(step.source, 'origin'))
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Limits({ limits }: { limits: Limit[] }) {
  return (
    <ul class="limits">
      {limits.map((limit) => (
        <li class={limit.kept ? 'kept' : 'not-kept'}>
          <span class="standing-of-limit">{limit.kept ? words.kept : words.notKept}</span>
          <span>
            <EngineText text={limit.sentence} />
            {limit.source && (
              <span class="origin">
                <EngineText text={limit.source} of="origin" />
              </span>
            )}
          </span>
        </li>
      ))}
    </ul>
  );
}

function Sources({ sources }: { sources: Source[] }) {
  return (
    <ul class="sources">
      {sources.map((source) => (
        <li>
          <cite>
            <EngineText text={source.document} />
          </cite>
          {source.place && (
            <>
              , <EngineText text={source.place} of="sourcePlace" />
            </>
          )}{' '}
          <span class="standing">{engineText(source.standing)}</span>
        </li>
      ))}
    </ul>
  );
}

function FindingBody({ finding, stands }: { finding: Finding; stands: boolean }) {
  const { margin, confidence } = finding;
  return (
    <div class="body">
      <p class="sentence">
        <EngineText text={finding.sentence} />
      </p>
      {finding.next && (
        <div class="next">
          <h5>{words.next}</h5>
          <p>
            <EngineText text={finding.next} />
          </p>
        </div>
      )}
      {(margin || confidence) && (
        <dl class="measures">
          {margin && (
            <div>
              <dt>{words.margin}</dt>
              <dd>
                {engineText(margin.text)}
                <MarginBar margin={margin} />
              </dd>
            </div>
          )}
          {confidence && (
            <div>
              <dt>{words.confidence}</dt>
              <dd>
                <EngineText text={confidence.text} />
              </dd>
            </div>
          )}
        </dl>
      )}
      {finding.values.length > 0 && (
        <Part heading={words.values}>
          <Values values={finding.values} />
          <CopyTable rowsOf={() => valueRows(finding.values)} />
        </Part>
      )}
      {finding.reasons.length > 0 && (
        <Part heading={words.reasons}>
          <Sentences sentences={finding.reasons} />
        </Part>
      )}
      {finding.steps.length > 0 && (
        <Part heading={words.steps}>
          <StepsTable steps={finding.steps} />
          <CopyTable rowsOf={() => stepRows(finding.steps)} />
        </Part>
      )}
      {finding.limits.length > 0 && (
        <Part heading={words.limits}>
          <Limits limits={finding.limits} />
        </Part>
      )}
      {finding.sources.length > 0 && (
        <Part heading={words.sources}>
          <Sources sources={finding.sources} />
        </Part>
      )}
      {finding.cautions.length > 0 && (
        <Part heading={words.cautions}>
          <Sentences sentences={finding.cautions} />
        </Part>
      )}
      <AsWritten finding={finding} />
      {(stands || finding.about.method) && (
        <p class="link">
          {finding.about.method && (
            <a href={addressOf({ at: 'help', page: finding.about.method })}>
              {strings.help.aboutMethod}
            </a>
          )}
          {stands && <a href={findingAddress(finding.id)}>{words.link}</a>}
        </p>
      )}
    </div>
  );
}

interface FindingCardProps {
  finding: Finding;
  /** The address of the page names this finding: open it and bring it into view. */
  linked: boolean;
  /** Everything is shown, as on paper. */
  printing: boolean;
  /** It stands in the findings of the site, and not in what would be. */
  stands?: boolean;
}

export function FindingCard({ finding, linked, printing, stands = true }: FindingCardProps) {
  const card = useRef<HTMLDetailsElement>(null);
  const [open, setOpen] = useState(linked);

  useEffect(() => {
    if (!linked) return;
    setOpen(true);
    card.current?.scrollIntoView({ block: 'start' });
    card.current?.querySelector('summary')?.focus({ preventScroll: true });
  }, [linked]);

  const shown = open || printing;
  return (
    <details
      class="finding"
      id={findingElementId(finding.id)}
      data-outcome={finding.outcome}
      ref={card}
      open={shown}
      onToggle={(event) => {
        if (!printing) setOpen(event.currentTarget.open);
      }}
    >
      <summary>
        <OutcomeMark outcome={finding.outcome} />
        <span class="head">
          <h4>
            <EngineText text={finding.title} of="title" />
          </h4>
          <span class="line">
            <span class="phrase">{strings.outcomes[finding.outcome]}</span>{' '}
            {finding.margin && (
              <span class="margin">{words.marginOf(engineText(finding.margin.text))}</span>
            )}{' '}
            {finding.governs && <span class="governs">{words.governs}</span>}
          </span>
        </span>
      </summary>
      {shown && <FindingBody finding={finding} stands={stands} />}
    </details>
  );
}
