/** Proportions in whole buckets for the filled rock of a zone, taken over as a revision. */
import { useState } from 'preact/hooks';
import { engineText } from '../engine_text';
import type { Finding, Picture, Problem } from '../findings';
import { go } from '../places';
import { PicturesPanel } from '../pictures_panel';
import { ProblemLines } from '../problem_list';
import { change } from '../record/site_record';
import { pictureWidth, view } from '../site_assessment';
import { strings } from '../strings';
import { useAsked } from './asked';
import { type Compared, ComparedTable } from './compared_table';
import { itemsOf, nameOfItem } from './list_page';
import { draftOf, mixChanges, type MixDraft, mixOf } from './mix_draft';
import { StudyCautions, StudyFindings, StudyFrame, StudyVerdict } from './study_frame';
import { CheckedItems, StudyLine, StudySelect } from './study_inputs';
import { placedProblems } from './trial';

const words = strings.desk.studies.mix;

interface MixAnswer {
  mix?: {
    proportions: { rock_parts: string; parts: { material: string; parts: string }[] };
    findings: Finding[];
    pictures: Picture[];
  };
  problems?: Problem[];
}

/** The values of the mix that stands beside those of the one proposed. */
function besideOneAnother(stands: Finding | undefined, proposed: Finding): Compared {
  const findings = stands ? [stands, proposed] : [proposed];
  const meanings = [
    ...new Set(findings.flatMap(({ values }) => values.map(({ meaning }) => meaning))),
  ];
  return {
    columns: stands ? [words.asKept, words.proposed] : [words.proposed],
    rows: [
      {
        what: words.outcome,
        cells: findings.map((finding) => ({
          text: strings.outcomes[finding.outcome],
          outcome: finding.outcome,
          finding,
        })),
      },
      ...meanings.map((meaning) => ({
        what: engineText(meaning, 'meaning'),
        cells: findings.map(({ values }) => ({
          text: values.find((value) => value.meaning === meaning)?.text ?? words.none,
        })),
      })),
    ],
  };
}

function MixForm({
  draft,
  materials,
  onChange,
}: {
  draft: MixDraft;
  materials: readonly { id: string; name: string }[];
  onChange: (draft: MixDraft) => void;
}) {
  const put = (key: keyof MixDraft) => (value: string) => onChange({ ...draft, [key]: value });
  return (
    <form class="study-form" onSubmit={(event) => event.preventDefault()}>
      <StudySelect
        label={words.kind}
        value={draft.kind}
        options={words.kinds}
        onChange={put('kind')}
      />
      <StudySelect
        label={words.placing}
        value={draft.placing}
        options={words.placings}
        onChange={put('placing')}
      />
      <StudyLine
        label={words.rockVoids}
        example="0.40"
        value={draft.rock_voids}
        onChange={put('rock_voids')}
      />
      <StudyLine
        label={words.mostBuckets}
        example="12"
        value={draft.most_buckets}
        onChange={put('most_buckets')}
      />
      <StudyLine
        label={words.bucket}
        example="3 yd³"
        value={draft.bucket}
        onChange={put('bucket')}
      />
      <CheckedItems
        legend={words.onOffer}
        items={materials}
        left={draft.left}
        onChange={(left) => onChange({ ...draft, left })}
      />
    </form>
  );
}

export function MixStudy({ id, zone }: { id: string; zone: Record<string, unknown> }) {
  const name = nameOfItem(id, zone);
  const mixes = itemsOf('mixes');
  const named = typeof zone.mix === 'string' ? zone.mix : undefined;
  const before = mixes.find(([one]) => one === named)?.[1];
  const materials = itemsOf('materials').map(([one, item]) => ({
    id: one,
    name: nameOfItem(one, item),
  }));
  const ids = materials.map((material) => material.id);
  const [draft, setDraft] = useState<MixDraft>(() => draftOf(before, ids));
  const mixName = before ? nameOfItem(named ?? '', before) : words.newName(name);
  const changesWith = (proportions?: { rock_parts: string; parts: unknown[] }) =>
    mixChanges(
      id,
      named,
      mixes.map(([one]) => one),
      mixOf(draft, before, mixName, ids, proportions),
    );
  const changes = changesWith();
  const { answer, looking } = useAsked<MixAnswer>(
    { ask: 'mix', zone: id, pictures: { width: pictureWidth.value } },
    changes,
  );
  const mix = answer?.mix;
  const [first] = mix?.findings ?? [];
  const shown = view.value;
  const stands =
    shown.state === 'findings'
      ? shown.findings.findings.find((finding) => finding.id === `mix.${id}`)
      : undefined;
  const keep = async () => {
    if (!mix || looking) return;
    await change(changesWith(mix.proportions), words.note(mixName));
    go({ at: 'desk', show: 'part', part: 'zones', id });
  };
  return (
    <StudyFrame heading={words.heading(name)} help={words.help} back={{ part: 'zones', id, name }}>
      <MixForm draft={draft} materials={materials} onChange={setDraft} />
      <p class="muted" role="status">
        {looking ? strings.desk.form.looking : ''}
      </p>
      <ProblemLines problems={placedProblems(answer?.problems ?? [], changes)} />
      {mix && first && (
        <>
          <StudyVerdict finding={first} />
          <p>
            <button
              type="button"
              class="button"
              disabled={looking}
              // `recordTrouble` says why it could not be kept; nothing was changed.
              onClick={() => void keep().catch(() => undefined)}
            >
              {words.keep}
            </button>
          </p>
          <div class="study-picture">
            <PicturesPanel pictures={mix.pictures} />
          </div>
          <ComparedTable
            compared={besideOneAnother(stands, first)}
            caption={words.heading(name)}
            marksDifferences={stands !== undefined}
          />
          <StudyCautions findings={mix.findings} />
          <StudyFindings heading={words.others} of={name} findings={mix.findings.slice(1)} />
        </>
      )}
    </StudyFrame>
  );
}
