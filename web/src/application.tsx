/** The page: header, what the view asks for, footer. */
import { FailureNotice } from './failure_notice';
import { FindingsList } from './findings_list';
import { Headline } from './headline';
import { DropPlace } from './open_site';
import { NewVersionNotice, PageFooter } from './page_footer';
import { PageHeader } from './page_header';
import { PicturesPanel } from './pictures_panel';
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

export function Application() {
  const shown = view.value;
  return (
    <>
      <PageHeader />
      <main aria-busy={working.value}>
        {shown.state === 'problems' && (
          <ProblemList label={shown.label} problems={shown.problems} />
        )}
        {shown.state === 'failed' && <FailureNotice failure={shown.failure} />}
        {(shown.state === 'opening' || shown.state === 'findings') && <AssessedSite />}
      </main>
      <PageFooter findings={shown.state === 'findings' ? shown.findings : undefined} />
      <NewVersionNotice />
      <DropPlace />
    </>
  );
}
