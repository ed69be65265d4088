import type { ReactNode } from 'react';
import { FileTrigger } from 'react-aria-components';
import { Action } from '../controls/Action';

/** Phones hand out JPEG for these where their camera writes HEIC. */
const ACCEPTED = ['image/png', 'image/jpeg', 'image/webp', 'image/gif'];

type Props = {
  readonly onFile: (file: File) => void;
  readonly look?: 'plain' | 'primary';
  /** Opens the camera where there is one. */
  readonly camera?: boolean;
  readonly isDisabled?: boolean;
  readonly children: ReactNode;
};

/** A button that asks for a picture file. */
export function FilePick({ onFile, look = 'plain', camera = false, isDisabled = false, children }: Props) {
  return (
    <FileTrigger
      acceptedFileTypes={ACCEPTED}
      {...(camera ? { defaultCamera: 'environment' as const } : {})}
      onSelect={(files) => {
        const file = files?.[0];
        if (file !== undefined) onFile(file);
      }}
    >
      <Action look={look} isDisabled={isDisabled}>
        {children}
      </Action>
    </FileTrigger>
  );
}
