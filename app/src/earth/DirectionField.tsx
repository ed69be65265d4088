import { formatAzimuth, formatBearing, parseAzimuth } from '@footmark/site';
import { MeasureField } from '../controls/MeasureField';
import { useSite } from '../session/siteSession';

type Props = {
  readonly label: string;
  /** Radians clockwise from north. */
  readonly value: number | undefined;
  readonly onChange: (azimuth: number | undefined) => void;
  readonly hint?: string;
};

/** A direction as an azimuth or a bearing, printed as the site prints directions. */
export function DirectionField({ label, value, onChange, hint }: Props) {
  const { units } = useSite();
  const azimuths = units.direction === 'azimuth';
  return (
    <MeasureField
      label={label}
      value={value}
      parse={parseAzimuth}
      print={(azimuth) =>
        azimuths ? formatAzimuth(azimuth, { plain: true }) : formatBearing(azimuth, { plain: true })
      }
      onChange={onChange}
      placeholder={azimuths ? '12.5' : 'N 12 30 E'}
      when="typing"
      {...(hint === undefined ? {} : { hint })}
    />
  );
}
