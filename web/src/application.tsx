/** The page: header, what the view asks for, footer. */
import { useLayoutEffect } from 'preact/hooks';
import { FailureNotice } from './failure_notice';
import { CountScreen } from './field/count_screen';
import { FieldHome } from './field/field_home';
import { LoadForm, ProblemForm, QuickLookForm } from './field/lot_tasks';
import { LotPage } from './field/lot_page';
import { NewRockForm } from './field/new_rock_form';
import { UndoNotice } from './field/undo_notice';
import { FindingsList } from './findings_list';
import { Headline } from './headline';
import { DropPlace } from './open_site';
import { NewVersionNotice, PageFooter } from './page_footer';
import { PageHeader } from './page_header';
import { PicturesPanel, takePageWidth } from './pictures_panel';
import { isTask, place } from './places';
import { ProblemList } from './problem_list';
import { QuantitiesPanel } from './quantities_panel';
import { SaveFindings } from './save_findings';
import { view, working } from './site_assessment';
import { strings } from './strings';

/** Pictures and findings; the empty panel of an opening site already measures the width. */
function AssessedSite() {
  const shown = view.value;
  const answered = shown.state === 'findings' ? shown : undefined;
  return (
    <>
      {answered ? (
        <Headline findings={answered.findings} site={answered.site} />
      ) : (
        <p class="opening" role="status">
          {strings.headline.opening}
        </p>
      )}
      <div class="beside">
        <PicturesPanel pictures={answered?.pictures ?? []} />
        {answered && (
          <div class="list-column">
            <FindingsList findings={answered.findings.findings} />
            <QuantitiesPanel findings={answered.findings} />
            <SaveFindings findings={answered.findings} />
          </div>
        )}
      </div>
    </>
  );
}

/** The screen of the field that the address names. */
function FieldScreen() {
  const here = place.value;
  useLayoutEffect(takePageWidth, []);
  if (here.at === 'new-rock') return <NewRockForm />;
  if (here.at !== 'lot') return <FieldHome />;
  switch (here.task) {
    case 'count':
      return <CountScreen key={here.lot} lot={here.lot} />;
    case 'quick-look':
      return <QuickLookForm lot={here.lot} />;
    case 'load':
      return <LoadForm lot={here.lot} />;
    case 'problem':
      return <ProblemForm lot={here.lot} />;
    default:
      return <LotPage lot={here.lot} />;
  }
}

export function Application() {
  const shown = view.value;
  const inField = place.value.at !== 'findings';
  return (
    <>
      <PageHeader />
      <main id="content" tabIndex={-1} aria-busy={working.value}>
        {shown.state === 'problems' && (
          <ProblemList label={shown.label} problems={shown.problems} />
        )}
        {shown.state === 'failed' && <FailureNotice failure={shown.failure} />}
        {(shown.state === 'opening' || shown.state === 'findings') &&
          (inField ? <FieldScreen /> : <AssessedSite />)}
      </main>
      <PageFooter findings={shown.state === 'findings' ? shown.findings : undefined} />
      {inField && !isTask(place.value) && <UndoNotice />}
      <NewVersionNotice />
      <DropPlace />
    </>
  );
}
