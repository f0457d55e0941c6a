/** Soil, filter and rock of a zone: every pair of layers, which criterion holds, and what would serve. */
import { engineText } from '../engine_text';
import type { Finding } from '../findings';
import { addressOf } from '../places';
import { PicturesPanel } from '../pictures_panel';
import { view } from '../site_assessment';
import { strings } from '../strings';
import { type Compared, ComparedTable } from './compared_table';
import { nameOfItem } from './list_page';
import { StudyCautions, StudyFindings, StudyFrame, StudyVerdict } from './study_frame';

const words = strings.desk.studies.filter;

/** Every pair and thickness of the chain, from the soil up. */
function chain(findings: readonly Finding[]): Compared {
  return {
    columns: [words.holds, words.said, words.toDo],
    rows: findings.map((finding) => ({
      what: engineText(finding.title, 'title'),
      cells: [
        {
          text: strings.outcomes[finding.outcome],
          outcome: finding.outcome,
          finding,
          ...(finding.margin ? { margin: finding.margin.text } : {}),
        },
        { text: engineText(finding.sentence) },
        { text: engineText(finding.next) },
      ],
    })),
  };
}

export function FilterStudy({ id, zone }: { id: string; zone: Record<string, unknown> }) {
  const shown = view.value;
  const findings = shown.state === 'findings' ? shown.findings.findings : [];
  const pictures = shown.state === 'findings' ? shown.pictures : [];
  const own = findings.filter(({ topic, about }) => topic === 'filter' && about.zone === id);
  const whole = own.find((finding) => finding.id === `filter.${id}`);
  const layers = own.filter((finding) => finding.id.startsWith(`filter.${id}.`));
  const others = own.filter((finding) => finding !== whole && !layers.includes(finding));
  const name = nameOfItem(id, zone);
  return (
    <StudyFrame heading={words.heading(name)} help={words.help} back={{ part: 'zones', id, name }}>
      {own.length === 0 && <p>{words.none}</p>}
      {whole && <StudyVerdict finding={whole} />}
      <p>
        <a class="button" href={addressOf({ at: 'desk', show: 'part', part: 'zones', id })}>
          {words.edit}
        </a>
      </p>
      <div class="study-picture">
        <PicturesPanel pictures={pictures.filter((picture) => picture.id === `filter.${id}`)} />
      </div>
      {layers.length > 0 && (
        <ComparedTable compared={chain(layers)} caption={words.heading(name)} stands />
      )}
      <StudyCautions findings={own} />
      <StudyFindings heading={words.others} of={name} findings={others} stands />
    </StudyFrame>
  );
}
