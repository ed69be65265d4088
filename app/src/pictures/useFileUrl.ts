import { useEffect, useState } from 'react';
import { loadFile } from '../storage/fileStore';

/** An address for a stored file, given back when the component goes. */
export function useFileUrl(file: string): { readonly href: string } | 'coming' | 'missing' {
  const [url, setUrl] = useState<{ readonly href: string } | 'coming' | 'missing'>('coming');
  useEffect(() => {
    let href: string | null = null;
    let gone = false;
    setUrl('coming');
    loadFile(file).then(
      (stored) => {
        if (gone) return;
        href = stored && URL.createObjectURL(stored.blob);
        setUrl(href === null ? 'missing' : { href });
      },
      () => gone || setUrl('missing'),
    );
    return () => {
      gone = true;
      if (href !== null) URL.revokeObjectURL(href);
    };
  }, [file]);
  return url;
}
