/** Every sizing method that speaks of a zone, side by side, and why the others are silent. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { EngineText, engineText } from '../engine_text';
import type { Finding } from '../findings';
import { PicturesPanel } from '../pictures_panel';
import { view } from '../site_assessment';
import { strings } from '../strings';
import { ComparedTable } from './compared_table';
import { nameOfItem } from './list_page';
import { applicabilityOf, methodFindings, methodRows } from './methods_compared';
import { StudyFrame, StudyVerdict } from './study_frame';
import { CheckedItems } from './study_inputs';

const words = strings.desk.studies.methods;

/** Columns narrower than this cannot be read; the names of the rows take one too. */
const columnRem = 13;

/** How many methods stand beside one another in the room there is. */
function useColumnsThatFit() {
  const measured = useRef<HTMLDivElement>(null);
  const [columns, setColumns] = useState(1);
  useLayoutEffect(() => {
    const element = measured.current;
    if (!element) return undefined;
    const measure = () => {
      const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
      setColumns(Math.max(Math.floor(element.clientWidth / (columnRem * rem)) - 1, 1));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { measured, columns };
}

function inPortions(findings: readonly Finding[], size: number): Finding[][] {
  const portions: Finding[][] = [];
  for (let from = 0; from < findings.length; from += size) {
    portions.push(findings.slice(from, from + size));
  }
  return portions;
}

/** With the flow case where there are several. */
function columnNames(of: readonly Finding[], all: readonly Finding[]): string[] {
  const several = new Set(all.map(({ about }) => about.flow_case)).size > 1;
  return of.map(({ title, about }) => {
    const method = engineText(title, 'title');
    return several ? words.inFlowCase(method, about.flow_case ?? '') : method;
  });
}

function WhichMethods({
  all,
  left,
  onChange,
}: {
  all: readonly Finding[];
  left: ReadonlySet<string>;
  onChange: (left: ReadonlySet<string>) => void;
}) {
  const names = columnNames(all, all);
  return (
    <details class="study-which">
      <summary>{words.which(all.length - left.size, all.length)}</summary>
      <CheckedItems
        legend={words.shown}
        items={all.map(({ id }, index) => ({ id, name: names[index] ?? id }))}
        left={left}
        onChange={onChange}
      />
    </details>
  );
}

export function MethodsStudy({ id, zone }: { id: string; zone: Record<string, unknown> }) {
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const { measured, columns } = useColumnsThatFit();
  const shown = view.value;
  const findings = shown.state === 'findings' ? shown.findings.findings : [];
  const pictures = shown.state === 'findings' ? shown.pictures : [];
  const all = methodFindings(findings, id);
  const chosen = all.filter((finding) => !left.has(finding.id));
  const governing = all.find(({ governs }) => governs);
  const applicability = applicabilityOf(findings, id);
  const name = nameOfItem(id, zone);
  return (
    <StudyFrame heading={words.heading(name)} help={words.help} back={{ part: 'zones', id, name }}>
      {governing && (
        <section>
          <h2>{words.governing(engineText(governing.title, 'title'))}</h2>
          <StudyVerdict finding={governing} />
        </section>
      )}
      <div class="study-picture">
        <PicturesPanel pictures={pictures.filter((picture) => picture.id === `sizes.${id}`)} />
      </div>
      {all.length === 0 && <p>{words.none}</p>}
      {all.length > 0 && <WhichMethods all={all} left={left} onChange={setLeft} />}
      <div class="study-tables" ref={measured}>
        {inPortions(chosen, columns).map((portion) => (
          <ComparedTable
            key={portion.map((finding) => finding.id).join(' ')}
            compared={{ columns: columnNames(portion, all), rows: methodRows(portion) }}
            caption={words.heading(name)}
            stands
          />
        ))}
      </div>
      {applicability && (
        <section>
          <h2>
            <EngineText text={applicability.title} of="title" />
          </h2>
          <p>
            <EngineText text={applicability.sentence} />
          </p>
          <ul class="sentences">
            {applicability.reasons.map((reason) => (
              <li key={reason}>
                <EngineText text={reason} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </StudyFrame>
  );
}
