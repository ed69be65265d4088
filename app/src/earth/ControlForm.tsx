import {
  addControl,
  type ControlPoint,
  FOOT_M,
  formatLatLon,
  type LatLon,
  loadProjection,
  parseLatLon,
  type Ref,
} from '@footmark/site';
import { useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import { LengthField } from '../controls/unitFields';
import { PointField } from '../measure/PointField';
import { edit, useSite } from '../session/siteSession';
import { notify } from '../session/workbench';
import { newId } from '../tools/newId';
import { words } from '../words';
import { accuracyGrade, accuracyText, roundedAccuracy } from './accuracy';
import { DeviceLine } from './DeviceLine';
import { type DevicePosition, useDevicePosition } from './useDevicePosition';

/** Taken for a position that is typed from a map or a survey until it is given: feet or metres as the site has them. */
const TYPED_ACCURACY = { ft: 3 * FOOT_M, m: 1 };

/** Takes down a point of the site whose place on the earth is known: typed, or where this device stands. */
export function ControlForm({ onDone }: { readonly onDone: () => void }) {
  const unit = useSite().units.length === 'm' ? 'm' : 'ft';
  const [point, setPoint] = useState<Ref | null>(null);
  const [text, setText] = useState('');
  const [accuracy, setAccuracy] = useState<number | undefined>(TYPED_ACCURACY[unit]);
  const [device, setDevice] = useState<DevicePosition | null>(null);
  const { search, start, stop } = useDevicePosition();
  const parsed = parseLatLon(text);
  const fromDevice = device !== null && text === formatLatLon(device);

  const takeDevice = (position: DevicePosition) => {
    stop();
    setDevice(position);
    setText(formatLatLon(position));
    setAccuracy(roundedAccuracy(position.accuracy, unit));
  };
  const add = async (at: LatLon, of: Ref, sure: number) => {
    try {
      await loadProjection();
    } catch {
      notify('What works with latitude and longitude is not on this device yet. Try again with a network.');
      return;
    }
    const control: ControlPoint = {
      id: newId('g'),
      point: of,
      latitudeDeg: at.latitudeDeg,
      longitudeDeg: at.longitudeDeg,
      accuracy: sure,
      source: fromDevice ? 'device' : 'typed',
    };
    edit('Add a point of known latitude and longitude', (s) => addControl(s, { control }));
    onDone();
  };
  const ready = point !== null && parsed.ok && accuracy !== undefined && accuracy > 0;
  return (
    <form
      className={cards.entry}
      onSubmit={(event) => {
        event.preventDefault();
        if (ready && parsed.ok) void add(parsed.value, point, accuracy);
      }}
    >
      <PointField label="Point of the site" value={point} onChoose={setPoint} />
      <TextField
        className={controls.field ?? ''}
        value={text}
        onChange={setText}
        isInvalid={text.trim() !== '' && !parsed.ok}
      >
        <Label className={controls.label ?? ''}>Latitude and longitude</Label>
        <Input className={controls.input ?? ''} placeholder="40.446195, -79.948862" autoComplete="off" />
        {text.trim() !== '' && !parsed.ok ? (
          <Text slot="errorMessage" className={controls.error ?? ''}>
            {words.parseProblemText(parsed)}
          </Text>
        ) : (
          <Text slot="description" className={controls.hint ?? ''}>
            WGS 84; degrees, or degrees, minutes and seconds
          </Text>
        )}
      </TextField>
      <DeviceLine search={search} instead="type latitude and longitude" onStart={start} onTake={takeDevice} />
      <LengthField label="Accuracy" value={accuracy} onChange={setAccuracy} when="typing" />
      {accuracy === undefined ? null : <AccuracyLine accuracy={accuracy} />}
      <div className={cards.actions}>
        <Action look="primary" type="submit" isDisabled={!ready}>
          Add the point
        </Action>
        <Action look="quiet" onPress={onDone}>
          Cancel
        </Action>
      </div>
    </form>
  );
}

/** Says when an accuracy is too poor to turn a yard by. */
function AccuracyLine({ accuracy }: { readonly accuracy: number }) {
  const { units } = useSite();
  switch (accuracyGrade(accuracy)) {
    case 'good':
      return null;
    case 'fair':
      return (
        <p className={cards.finding} data-severity="warning">
          {accuracyText(accuracy, units)} is rough: over a yard, north comes out some degrees off. Wait for a
          better position or use points that are far apart.
        </p>
      );
    case 'poor':
      return (
        <p className={cards.finding} data-severity="warning">
          {accuracyText(accuracy, units)} is too poor for control: the position may lie outside of the yard.
          It can be kept to find the site on a map; do not take north from it.
        </p>
      );
  }
}
