import { useEffect, useState } from 'react';
import { Input, Label, TextField } from 'react-aria-components';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import { Tick } from '../controls/Tick';
import type { StoredTeam } from '../storage/records';
import { checkTeam, type TeamCheck } from './checkTeam';
import styles from './team.module.css';
import { readTeamAddress } from './teamAddress';
import { loadTeam } from './teamRecord';
import { joinTeam, leaveTeam } from './teamSession';
import { useTeamStatus } from './teamStatus';
import { teamStatusText } from './teamStatusText';

const ADDRESS_PROBLEMS = {
  'not-an-address': 'This is not an address. It looks like https://sites.example.com/yards.',
  'not-encrypted':
    'A password would go through the network unencrypted: the address must begin with https://.',
  'no-database':
    'The address names a server, but no database on it: its name comes after the server, as in https://sites.example.com/yards.',
} as const;

const CHECK_PROBLEMS: Record<Exclude<TeamCheck, 'fits'>, string> = {
  refused: 'The server does not take this user name and password.',
  missing: 'The server answers, but has no database of that name. Whoever runs it must make it first.',
  'no-answer':
    'Nothing answers there: there is no network, the address is wrong, or the server does not let pages of this address in (CORS).',
  'not-a-database': 'What answers there is not a database of CouchDB’s protocol.',
};

/** The team's database: its address, whether the device is in step with it, and the ways in and out. */
export function TeamFold() {
  const [team, setTeam] = useState<StoredTeam | null>(null);
  const status = useTeamStatus();
  useEffect(() => {
    void loadTeam().then(setTeam);
  }, []);
  return (
    <Fold title="Team" result={team === null ? 'none' : teamStatusText(status).title} isOpen={false}>
      {team === null ? <JoinForm onJoined={setTeam} /> : <Joined team={team} onChange={setTeam} />}
    </Fold>
  );
}

function JoinForm({ onJoined }: { readonly onJoined: (team: StoredTeam) => void }) {
  const [address, setAddress] = useState('');
  const [user, setUser] = useState('');
  const [password, setPassword] = useState('');
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const join = async () => {
    const read = readTeamAddress(address);
    if (!read.ok) {
      setProblem(ADDRESS_PROBLEMS[read.code]);
      return;
    }
    const team = {
      id: 'team',
      url: read.url,
      user: user || read.user,
      password: password || read.password,
      shareAll: false,
    } as const;
    setBusy(true);
    setProblem(null);
    const check = await checkTeam(team);
    setBusy(false);
    if (check !== 'fits') {
      setProblem(CHECK_PROBLEMS[check]);
      return;
    }
    try {
      await joinTeam(team);
      onJoined(team);
    } catch {
      setProblem('This device cannot keep the team: its storage is blocked or full.');
    }
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        void join();
      }}
    >
      <p className={styles.quiet}>
        A database that your company runs keeps the sites of all its devices alike. Nothing goes anywhere
        else. Ask whoever runs it for its address, and for a user name and a password of your own.
      </p>
      <Field label="Address of the team’s database" value={address} onChange={setAddress} type="url" />
      <Field label="User name" value={user} onChange={setUser} type="text" />
      <Field label="Password" value={password} onChange={setPassword} type="password" />
      <p className={styles.quiet}>
        They are kept on this device only, apart from the sites, in no file, link or log. Whoever has this
        device has them: use a user name that can be taken away.
      </p>
      {problem === null ? null : (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
      <Action look="primary" type="submit" isDisabled={busy}>
        {busy ? 'Asking the server' : 'Join the team'}
      </Action>
    </form>
  );
}

type FieldProps = {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly type: 'url' | 'text' | 'password';
};

function Field({ label, value, onChange, type }: FieldProps) {
  return (
    <TextField
      className={controls.field ?? ''}
      value={value}
      onChange={onChange}
      // an address without its https:// is taken, too
      type={type === 'url' ? 'text' : type}
      autoComplete="off"
      maxLength={500}
    >
      <Label className={controls.label ?? ''}>{label}</Label>
      <Input
        className={controls.input ?? ''}
        autoCapitalize="none"
        spellCheck={false}
        inputMode={type === 'url' ? 'url' : 'text'}
      />
    </TextField>
  );
}

type JoinedProps = { readonly team: StoredTeam; readonly onChange: (team: StoredTeam | null) => void };

function Joined({ team, onChange }: JoinedProps) {
  const status = useTeamStatus();
  const { title, text } = teamStatusText(status);
  const shareAll = async (all: boolean) => {
    const changed = { ...team, shareAll: all };
    await joinTeam(changed);
    onChange(changed);
  };
  return (
    <div className={styles.form}>
      <p>
        {team.user === '' ? '' : `${team.user} at `}
        {new URL(team.url).host}
        {new URL(team.url).pathname}
      </p>
      <p role="status">
        <strong>{title}.</strong> {text}
      </p>
      {status.state === 'exchanging' && status.toDo > 0 ? (
        <progress
          className={styles.progress}
          aria-label="Sites exchanged"
          value={status.done}
          max={status.done + status.toDo}
        />
      ) : null}
      <Tick isSelected={team.shareAll} onChange={(all) => void shareAll(all)}>
        Every site of this device goes to the team
      </Tick>
      <Action
        look="quiet"
        onPress={() => {
          void leaveTeam().then(() => onChange(null));
        }}
      >
        Leave the team: its sites stay on this device
      </Action>
    </div>
  );
}
