import type { Mutator } from '../reader';
import { below, upTo } from './bytes';
import { oneOf, onText } from './texts';

const TAGS = [
  'kml',
  'Document',
  'Folder',
  'Placemark',
  'name',
  'Point',
  'LineString',
  'Polygon',
  'LinearRing',
  'outerBoundaryIs',
  'innerBoundaryIs',
  'MultiGeometry',
  'coordinates',
  'description',
  'NetworkLink',
  'GroundOverlay',
  'Model',
  'gx:Track',
  'kml:Point',
  'x',
];

/** An element with all that is in it, as far as the nearest end of its name. */
const ELEMENT = /<([A-Za-z:]+)\b[^>]*>[\s\S]{0,4000}?<\/\1>/g;

const elementAway = onText((text, dice) => oneOf(text, ELEMENT, dice, () => ''));

const elementAgain = onText((text, dice) =>
  oneOf(text, ELEMENT, dice, (e) => e.repeat(Math.min(upTo(dice, 3000), Math.ceil(1_000_000 / e.length)))),
);

const elementMoved = onText((text, dice) => {
  const found = [...text.matchAll(ELEMENT)];
  if (found.length === 0) return text;
  const [piece] = dice.pick(found);
  const ends = [...text.matchAll(/>/g)];
  const at = (ends.length === 0 ? 0 : dice.pick(ends).index) + 1;
  return text.slice(0, at) + piece + text.slice(at);
});

const elementAround = onText((text, dice) => {
  const tag = dice.pick(TAGS);
  return oneOf(text, ELEMENT, dice, (e) => `<${tag}>${e}</${tag}>`);
});

const otherTag = onText((text, dice) => {
  const tag = dice.pick(TAGS);
  return dice.next() < 0.7
    ? oneOf(text, ELEMENT, dice, (e) =>
        e.replace(/^<[A-Za-z:]+/, `<${tag}`).replace(/[A-Za-z:]+>$/, `${tag}>`),
      )
    : oneOf(text, /<\/?[A-Za-z:]+/g, dice, (t) => `${t.startsWith('</') ? '</' : '<'}${tag}`);
});

const INSIDE = [
  '<![CDATA[1,2]]>',
  '<!-- 3,4 -->',
  '<?x 5,6?>',
  '<x/>',
  '<x>7,8</x>',
  '&#49;,2',
  '&lt;',
  '&x;',
  '&amp;amp;',
  '<name>y</name>',
  '<Point><coordinates>1,2</coordinates></Point>',
  '<coordinates>1,2</coordinates>',
  '<innerBoundaryIs/>',
  ' 1,2 3,4',
  ',',
];

const inside = onText((text, dice) => {
  const places = [...text.matchAll(/<(coordinates|name|Placemark|Point|LineString|LinearRing)>/g)];
  if (places.length === 0) return text;
  const place = dice.pick(places);
  const at = place.index + place[0].length + below(dice, 8);
  return text.slice(0, at) + dice.pick(INSIDE) + text.slice(at);
});

const doctype = onText((text, dice) => {
  const entities = Array.from(
    { length: upTo(dice, 40) },
    (_, i) => `<!ENTITY e${i} "${i === 0 ? 'aaaaaaaaaa' : `&e${i - 1};`.repeat(10)}">`,
  ).join('');
  const kind = dice.pick([`[${entities}]`, 'SYSTEM "file:///etc/passwd"', `[<!ENTITY % p SYSTEM "x"> %p;]`]);
  return oneOf(text, /<kml/g, dice, (t) => `<!DOCTYPE kml ${kind}>${t}`);
});

const attributes = onText((text, dice) =>
  oneOf(
    text,
    /<[A-Za-z:]+/g,
    dice,
    (t) => `${t}${' a="1"'.repeat(upTo(dice, 3))}${dice.pick(['', ' b', ' c=1', ' d="<"'])}`,
  ),
);

export const kmlMutators: readonly Mutator[] = [
  elementAway,
  elementAgain,
  elementMoved,
  elementMoved,
  elementAround,
  elementAround,
  otherTag,
  otherTag,
  inside,
  inside,
  doctype,
  attributes,
];
