import { type ControlPoint, formatAzimuth, formatLatLon, removeControl } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Plus, X } from 'lucide-react';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { Action } from '../controls/Action';
import { pointName } from '../measure/pointChoices';
import pictures from '../pictures/pictures.module.css';
import { edit, useDerived, useSite } from '../session/siteSession';
import { accuracyGrade, accuracyText } from './accuracy';
import { ControlForm } from './ControlForm';
import { NorthForm } from './NorthForm';

/** Where north is, and where on the earth the site lies. */
export function EarthFields() {
  const { frame } = useSite();
  const about = useDerived().findings.filter((f) => /^(north|control)-/.test(f.code));
  const [adding, setAdding] = useState(false);
  return (
    <>
      <NorthForm />
      <NorthLine />
      {about.map((finding) => (
        <FindingRow key={finding.code + JSON.stringify(finding.at)} finding={finding} />
      ))}
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
    </>
  );
}

/** What follows for the plan. */
function NorthLine() {
  const { known, northAzimuth, northSigma } = useDerived().frame;
  if (!known) return null;
  const sure =
    northSigma === null ? '' : `, sure to ${formatAzimuth(northSigma, { decimals: 1 })} by their accuracy`;
  return (
    <p className={cards.empty}>
      Straight up on the plan looks along {formatAzimuth(northAzimuth, { decimals: 2 })}
      {sure}.
    </p>
  );
}

function ControlRow({ control }: { readonly control: ControlPoint }) {
  const site = useSite();
  const name = pointName(site, control.point);
  const remove = () =>
    edit('Remove a point of known latitude and longitude', (s) => removeControl(s, { id: control.id }));
  const residual = useDerived().frame.residuals.get(control.id);
  const off =
    residual === undefined || site.frame.control.length < 2
      ? ''
      : `, ${lengthText(Math.hypot(residual.x, residual.y), site.units)} off`;
  const sure = `to ${accuracyText(control.accuracy, site.units)}`;
  const poor = accuracyGrade(control.accuracy) === 'poor' ? ', too poor for north' : '';
  return (
    <div className={pictures.pairRow}>
      <span className={cards.grow}>
        {name}
        <small>
          {formatLatLon(control)}, {sure}
          {control.source === 'device' ? ', from the device' : ''}
          {off}
          {poor}
        </small>
      </span>
      <Action look="icon" aria-label={`Remove the position of ${name}`} onPress={remove}>
        <X size={20} aria-hidden />
      </Action>
    </div>
  );
}
