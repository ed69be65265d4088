import { type Place, valueAt } from '@footmark/merge';
import { ruleNames, type Site, sigmaNames, type Target } from '@footmark/site';
import { words } from '../words';

/** The site's own facts by the names that its cards give them. */
const FACTS: Readonly<Record<string, string>> = {
  name: 'The site’s name',
  address: 'The site’s address',
  note: 'The site’s note',
  units: 'Units',
  tape: 'The crew’s tape',
  entryReach: 'How far an entry may be from its pipe',
  fit: 'The fit that was taken',
  'frame/north': 'North',
  'rules/set': 'The rules that hold here',
  'rules/trees': 'The rule for root zones',
  'digging/soil': 'The soil',
  'digging/disturbed': 'Whether the ground was dug before',
  'digging/protection': 'How sides are kept',
  'digging/oneCall': 'The one-call ticket',
};

const LISTS: Readonly<Record<string, string>> = {
  underlays: 'A picture under the plan',
  visits: 'A visit',
  pairs: 'Two readings of one thing',
  different: 'Two readings of two things',
  setAside: 'What is set aside',
  'frame/control': 'A point known on the earth',
  'digging/notes': 'A note',
};

/** What a thing is called that one of two states of a site has. */
export function placeName(place: Place, site: Site, other: Site): string {
  const [list = '', name = '', inside, reading] = place;
  const in_ = valueAt(site, place) === undefined ? other : site;
  const called = (target: Target) => words.targetName(target, in_);
  if (list === 'features') return called({ kind: 'feature', id: name });
  if (list === 'paths') return called({ kind: 'path', id: name });
  if (list === 'runs' && inside === 'readings')
    return called({ kind: 'reading', run: name, id: reading ?? '' });
  if (list === 'runs') return called({ kind: 'run', id: name });
  if (list === 'digging' && name === 'digs') return called({ kind: 'dig', id: inside ?? '' });
  if (list === 'asFound') {
    const label = in_.asFound.find((found) => found.id === name)?.given?.label;
    return label === undefined ? 'What a crew found' : `What a crew found at ${label}`;
  }
  const rule = list === 'rules' ? ruleNames.find((each) => each === inside) : undefined;
  if (rule !== undefined) return words.ruleName(rule);
  const sigma = list === 'sigmas' ? sigmaNames.find((each) => each === name) : undefined;
  if (sigma !== undefined) return words.sigmaName(sigma);
  return FACTS[place.join('/')] ?? LISTS[list] ?? LISTS[`${list}/${name}`] ?? place.join(' ');
}
