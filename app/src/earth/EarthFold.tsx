import { type ControlPoint, changeSite, formatLatLon } from '@footmark/site';
import { Plus, X } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { pointName } from '../measure/pointChoices';
import pictures from '../pictures/pictures.module.css';
import { edit, useSite } from '../session/siteSession';
import { accuracyGrade, accuracyText } from './accuracy';
import { ControlForm } from './ControlForm';
import { NorthForm } from './NorthForm';

/** Where north is, and where on the earth the site lies. */
export function EarthFold() {
  const { frame } = useSite();
  const [adding, setAdding] = useState(false);
  return (
    <Fold title="North and place on the earth">
      <NorthForm />
      <h3>Points of known latitude and longitude</h3>
      {frame.control.length === 0 ? (
        <p className={cards.empty}>
          One places the site on the earth, two or more also give north. A phone is good to a few yards at
          best.
        </p>
      ) : (
        <ol className={cards.rows}>
          {frame.control.map((control) => (
            <li key={control.id}>
              <ControlRow control={control} />
            </li>
          ))}
        </ol>
      )}
      {adding ? (
        <ControlForm onDone={() => setAdding(false)} />
      ) : (
        <Action onPress={() => setAdding(true)}>
          <Plus size={18} aria-hidden /> Add a point
        </Action>
      )}
    </Fold>
  );
}

function ControlRow({ control }: { readonly control: ControlPoint }) {
  const site = useSite();
  const name = pointName(site, control.point);
  const remove = () =>
    edit('Remove a point of known latitude and longitude', (s) =>
      changeSite(s, { frame: { ...s.frame, control: s.frame.control.filter((c) => c.id !== control.id) } }),
    );
  const sure = `to ${accuracyText(control.accuracy, site.units)}`;
  const poor = accuracyGrade(control.accuracy) === 'poor' ? ', too poor for north' : '';
  return (
    <div className={pictures.pairRow}>
      <span className={cards.grow}>
        {name}
        <small>
          {formatLatLon(control)}, {sure}
          {control.source === 'device' ? ', from the device' : ''}
          {poor}
        </small>
      </span>
      <Action look="icon" aria-label={`Remove the position of ${name}`} onPress={remove}>
        <X size={20} aria-hidden />
      </Action>
    </div>
  );
}
