import { useEffect, useState } from 'react';
import { useFileUrl } from '../../pictures/useFileUrl';

type Props = {
  readonly id: string;
  /** As it came along with an answer; null: it is on the device, or nowhere. */
  readonly file: File | null;
  readonly label: string;
};

/** A photo of what was found. */
export function FoundPhoto({ id, file, label }: Props) {
  return file === null ? <Kept id={id} label={label} /> : <Brought file={file} label={label} />;
}

function Kept({ id, label }: Omit<Props, 'file'>) {
  const url = useFileUrl(id);
  if (url === 'coming') return null;
  return url === 'missing' ? (
    <p>A photo that is not on this device.</p>
  ) : (
    <img src={url.href} alt={`Found at ${label}`} />
  );
}

function Brought({ file, label }: { readonly file: File; readonly label: string }) {
  const [href, setHref] = useState<string | null>(null);
  useEffect(() => {
    const url = URL.createObjectURL(file);
    setHref(url);
    return () => URL.revokeObjectURL(url);
  }, [file]);
  return href === null ? null : <img src={href} alt={`Found at ${label}`} />;
}
