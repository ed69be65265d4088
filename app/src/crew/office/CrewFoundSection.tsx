import { findsOutside, type Site, type SiteAccuracy } from '@footmark/site';
import { FolderOpen, HardHat } from 'lucide-react';
import { useEffect, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { useLocation } from 'wouter';
import { NO_PINS, usePlanPins } from '../../canvas/planPins';
import cards from '../../cards/cards.module.css';
import { FindingRow } from '../../cards/FindingRow';
import { Action } from '../../controls/Action';
import { useFit } from '../../fit/fitSession';
import { useDerived, useSite } from '../../session/siteSession';
import { words } from '../../words';
import { AnswerPreview } from './AnswerPreview';
import { AnswerProblem } from './AnswerProblem';
import { AsBuiltForm } from './AsBuiltForm';
import { FoundGroups } from './FoundGroups';
import { type AnswerFilesFailure, type OpenedAnswerFiles, readAnswerFiles } from './readAnswerFiles';

/** What crews sent back: an answer is opened and looked at, taken over, and made into the pipe as it was built. */
export function CrewFoundSection() {
  const site = useSite();
  const derived = useDerived();
  const { fit } = useFit();
  const [, go] = useLocation();
  const [opened, setOpened] = useState<OpenedAnswerFiles | null>(null);
  const [failure, setFailure] = useState<AnswerFilesFailure | null>(null);
  useEffect(() => {
    const found = derived.found.flatMap(({ at, sought }) =>
      at === null ? [] : { at, sought: sought?.at ?? null },
    );
    usePlanPins.setState({ found });
    return () => usePlanPins.setState(NO_PINS);
  }, [derived]);
  const read = async (files: readonly File[]) => {
    const done = await readAnswerFiles(files);
    setOpened(done.ok ? done.opened : null);
    setFailure(done.ok ? null : done.failure);
  };
  const about = [
    ...derived.findings.filter((f) => f.code.startsWith('as-found')),
    ...(fit === null ? [] : findsOutside(derived, fit)),
  ];
  return (
    <section className={cards.section} aria-label="What the crew found">
      <h3>What the crew found</h3>
      <Action wide onPress={() => go(`/crew/${site.id}`)}>
        <HardHat size={20} aria-hidden /> See what the crew sees
      </Action>
      <FileTrigger
        acceptedFileTypes={['.json', 'application/json', 'image/jpeg', 'image/png', 'image/webp']}
        allowsMultiple
        onSelect={(files) => files !== null && files.length > 0 && void read([...files])}
      >
        <Action wide>
          <FolderOpen size={20} aria-hidden /> Open a crew’s answer
        </Action>
      </FileTrigger>
      {failure === null ? null : <AnswerProblem failure={failure} onClose={() => setFailure(null)} />}
      {opened === null ? null : <AnswerPreview opened={opened} onClose={() => setOpened(null)} />}
      {derived.found.length === 0 ? (
        <p className={cards.empty}>
          Nothing has come back yet. The crew sends its answer as a file, with its photos beside it: choose
          them together.
        </p>
      ) : (
        <>
          {about.map((finding) => (
            <FindingRow key={JSON.stringify([finding.code, finding.at, finding.values])} finding={finding} />
          ))}
          <FoundGroups site={site} derived={derived} canRemove />
          {derived.foundAccuracy === null ? null : (
            <AgainstDigging accuracy={derived.foundAccuracy} site={site} />
          )}
          <AsBuiltForm />
        </>
      )}
    </section>
  );
}

/** How good the computation was, by what was laid bare. */
function AgainstDigging({ accuracy, site }: { readonly accuracy: SiteAccuracy; readonly site: Site }) {
  const { text, cure } = words.accuracyText(accuracy, site, 'digging');
  return (
    <div>
      <p>{text}</p>
      {cure === '' ? null : <p className={cards.sub}>{cure}</p>}
    </div>
  );
}
