/** A new site in three steps: its name, its water, the first part of its works. */
import { useState } from 'preact/hooks';
import { AuthorField } from '../field/author_field';
import { BeginSite } from '../new_site';
import { go } from '../places';
import { pointerTo } from '../record/revision';
import { siteState, stateIsCurrent } from '../site_state';
import { strings } from '../strings';
import { Beside } from './beside';
import { type FormPart, provisionalId, useDeskForm } from './desk_form';
import { collections } from './document_schema';
import { FormFrame } from './form_frame';
import { GroupedFields } from './item_page';

const words = strings.desk.start;

type Step = 1 | 2 | 3;

/** Items that a step asks for, with the fields that are asked. */
interface Asked {
  part: string;
  heading: string;
  only: string[];
  beginning: Record<string, unknown>;
}

const id = provisionalId;

const water: Asked[] = [
  {
    part: 'flow_cases',
    heading: words.floodHeading,
    only: ['name', 'discharge', 'return_period_years'],
    beginning: { name: words.design, purpose: 'design' },
  },
  {
    part: 'sections',
    heading: words.sectionHeading,
    only: ['name', 'survey', 'left_bank', 'right_bank', 'energy_slope'],
    beginning: {},
  },
];

/** The rock comes from a source that is known, or from a new one. */
function works(): Asked[] {
  const sources = Object.keys(siteState.value.sources ?? {});
  const sections = Object.keys((siteState.value as { sections?: object }).sections ?? {});
  const known = sources.length > 0;
  const source: Asked = {
    part: 'sources',
    heading: words.sourceHeading,
    only: ['name', 'specific_gravity', 'angularity'],
    beginning: { angularity: 'angular' },
  };
  const zone: Asked = {
    part: 'zones',
    heading: words.zoneHeading,
    only: [
      'name',
      'place',
      'section',
      'bank',
      'toe_station',
      'top_station',
      'class',
      ...(known ? ['source'] : []),
      'layer_thickness',
    ],
    beginning: {
      source: known ? sources[0] : id('sources'),
      ...(sections[0] === undefined ? {} : { section: sections[0] }),
    },
  };
  return known ? [zone] : [source, zone];
}

function Progress({ step }: { step: Step }) {
  return (
    <ol class="steps-so-far">
      {words.steps.map((name, index) => (
        <li key={name} {...(index + 1 === step ? { 'aria-current': 'step' as const } : {})}>
          {name}
        </li>
      ))}
    </ol>
  );
}

function AskedStep({ step, asked }: { step: 2 | 3; asked: Asked[] }) {
  const pointerOf = ({ part }: Asked) => pointerTo(part, id(part));
  const parts: FormPart[] = asked.map((one) => ({
    pointer: pointerOf(one),
    kept: undefined,
    beginning: one.beginning,
  }));
  const form = useDeskForm(`start-${step}`, parts);
  const onwards = (zone?: string) => {
    if (step === 2) go({ at: 'desk', show: 'start', step: 3 });
    else if (zone === undefined) go({ at: 'desk', show: 'board' });
    else go({ at: 'desk', show: 'part', part: 'zones', id: zone });
  };
  const keep = async () => {
    const ids = await form.keep(words.notes[step - 1] ?? '');
    if (ids) onwards(ids[id('zones')]);
  };
  return (
    <div class="desk-item">
      <div class="desk-main">
        <FormFrame form={form} keepWords={words.next} onKeep={() => void keep()}>
          {asked.map((one) => (
            <section class="field-group" key={one.part}>
              <h2>{one.heading}</h2>
              <GroupedFields
                part={one.part}
                node={collections.get(one.part) ?? {}}
                pointer={pointerOf(one)}
                value={form.values[pointerOf(one)]}
                only={one.only}
                onChange={(next) => form.set(pointerOf(one), next)}
              />
            </section>
          ))}
        </FormFrame>
        <p>
          <button type="button" class="button quiet" onClick={() => onwards()}>
            {words.later}
          </button>
        </p>
      </div>
      <Beside trial={form.trial} item={{ part: 'zones', id: id('zones') }} />
    </div>
  );
}

export function NewSiteSteps({ step }: { step: Step }) {
  // What the step before put in is offered in the next.
  const [ready, setReady] = useState<Step>(1);
  if (ready !== step && stateIsCurrent.value) setReady(step);
  return (
    <div class="new-site-steps">
      <h1>{words.heading}</h1>
      <p class="muted">{words.step(step)}</p>
      <Progress step={step} />
      {step === 1 && (
        <BeginSite onBegun={() => go({ at: 'desk', show: 'start', step: 2 })}>
          <AuthorField />
        </BeginSite>
      )}
      {step === 2 && ready === 2 && <AskedStep key="2" step={2} asked={water} />}
      {step === 3 && ready === 3 && <AskedStep key="3" step={3} asked={works()} />}
    </div>
  );
}
