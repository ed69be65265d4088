import { changeGround, type Protection, soilIds } from '@footmark/site';
import { Fold } from '../cards/Fold';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { Tick } from '../controls/Tick';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';

const PROTECTIONS: readonly Protection[] = ['slope', 'shield'];

/** What the ground is and how the sides of digs are kept: a competent person on site decides. */
export function GroundFold() {
  const { digging } = useSite();
  return (
    <Fold title="The ground" result={words.soilName(digging.soil)}>
      <Choice
        label="Soil, as a competent person judged it"
        options={soilIds.map((id) => ({ id, name: words.soilName(id) }))}
        value={digging.soil}
        onChange={(soil) => edit('Say what the soil is', (s) => changeGround(s, { soil }))}
      />
      <Tick
        isSelected={digging.disturbed}
        onChange={(disturbed) => edit('Say whether it was dug before', (s) => changeGround(s, { disturbed }))}
      >
        It was dug here before, as over an old drain
      </Tick>
      <Segments
        label="Sides are"
        options={PROTECTIONS.map((id) => ({ id, name: words.protectionName(id) }))}
        value={digging.protection}
        onChange={(protection) => edit('Say how the sides are kept', (s) => changeGround(s, { protection }))}
      />
    </Fold>
  );
}
