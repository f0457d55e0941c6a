/** What is looked into of one item of the document. */
import type { DeskStudy } from '../places';
import { pointerTo } from '../record/revision';
import { standingAt } from '../record/undoing';
import { siteState, stateIsCurrent } from '../site_state';
import { strings } from '../strings';
import { FilterStudy } from './filter_study';
import { MethodsStudy } from './methods_study';
import { MixStudy } from './mix_study';
import { OtherRock } from './other_rock';
import { PlanStudy } from './plan_study';
import { SubmittalsStudy } from './submittals_study';

const words = strings.desk;

export function StudyPage({ part, id, study }: { part: string; id: string; study: DeskStudy }) {
  const item = standingAt(siteState.value, pointerTo(part, id));
  if (item === null || typeof item !== 'object') {
    return <p role="status">{stateIsCurrent.value ? words.noSuchItem : words.form.looking}</p>;
  }
  const stated = item as Record<string, unknown>;
  switch (study) {
    case 'other-rock':
      return <OtherRock key={id} id={id} zone={stated} />;
    case 'methods':
      return <MethodsStudy key={id} id={id} zone={stated} />;
    case 'submittals':
      return <SubmittalsStudy key={id} id={id} source={stated} />;
    case 'plan':
      return <PlanStudy key={id} id={id} centreline={stated} />;
    case 'filter':
      return <FilterStudy key={id} id={id} zone={stated} />;
    case 'mix':
      return <MixStudy key={id} id={id} zone={stated} />;
  }
}
