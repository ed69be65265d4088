import { derive, type Site, writeSite } from '@footmark/site';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { Action } from '../controls/Action';
import { recall, remember } from '../session/onDevice';
import { readyToDerive } from '../session/readyToDerive';
import { loadSite, saveSite } from '../storage/siteStore';
import { newId } from '../tools/newId';
import { words } from '../words';
import styles from './link.module.css';

/** Which state of a site came to this device by a link: what nobody has changed since may be taken the place of. */
const keyOf = (id: string) => `footmark-came/${id}`;

type Here = 'nothing' | 'same' | 'came-before' | 'own';

/** A site that came with a link: to be read by a crew, or worked on. What is on this device already is never lost. */
export function CameSite({ site }: { readonly site: Site }) {
  const [, go] = useLocation();
  const [here, setHere] = useState<Here | null>(null);
  const [isFull, setFull] = useState(false);
  const { label, cameText } = words.crew;
  const [marks, setMarks] = useState(0);
  useEffect(() => {
    readyToDerive(site).then(
      () => setMarks(derive(site).marks.filter(({ place }) => place !== null).length),
      () => undefined,
    );
    whatIsHere(site).then(setHere, () => setHere('nothing'));
  }, [site]);
  const keep = async (as: Site, then: string) => {
    try {
      await saveSite(as, Date.now());
      remember(keyOf(as.id), writeSite(as));
      go(`/${then}/${as.id}`);
    } catch {
      setFull(true);
    }
  };
  const open = (then: 'crew' | 'site') => {
    if (here === 'same') go(`/${then}/${site.id}`);
    else void keep(here === 'own' ? { ...site, id: newId('s') } : site, then);
  };
  return (
    <>
      <h1>{label('plan-came')}</h1>
      <p className={styles.name}>{site.name}</p>
      <p>{cameText({ marks, things: site.features.length })}</p>
      {isFull ? <p role="alert">{label('storage-silent')}</p> : null}
      {here === 'own' ? (
        <>
          <p role="status">{label('other-here')}</p>
          <Action look="primary" onPress={() => go(`/crew/${site.id}`)}>
            {label('keep-old')}
          </Action>
          <Action onPress={() => open('crew')}>{label('take-new')}</Action>
        </>
      ) : (
        <>
          <Action look="primary" isDisabled={here === null} onPress={() => open('crew')}>
            {label('show-marks')}
          </Action>
          <Action isDisabled={here === null} onPress={() => open('site')}>
            {label('open-to-work')}
          </Action>
        </>
      )}
    </>
  );
}

async function whatIsHere(site: Site): Promise<Here> {
  const loaded = await loadSite(site.id);
  if (loaded === null) return 'nothing';
  const text = loaded.ok ? writeSite(loaded.site) : null;
  if (text === writeSite(site)) return 'same';
  return text !== null && text === recall(keyOf(site.id)) ? 'came-before' : 'own';
}
