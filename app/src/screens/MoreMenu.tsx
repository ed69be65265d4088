import { EllipsisVertical } from 'lucide-react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { useLocation } from 'wouter';
import controls from '../controls/controls.module.css';
import { takeNewer, useProgram } from '../offline/newerVersion';
import { turnPlaces, useWishForPlaces } from '../pictures/wishForPlaces';
import { pasteThings } from '../session/chosenThings';
import { notify, toggleLeaf } from '../session/workbench';
import { nextTheme } from '../theme/chosenTheme';

type Item = { readonly name: string; readonly does: () => void };

const ITEMS: readonly Item[] = [
  { name: 'History', does: () => toggleLeaf('history') },
  { name: 'Paste what was copied', does: pasteThings },
  { name: 'Paper, night or sun colours', does: nextTheme },
  { name: 'Rules and their sources', does: () => toggleLeaf('rules') },
  { name: 'Keys', does: () => toggleLeaf('keys') },
];

/** What is wanted now and then. */
export function MoreMenu() {
  const [, go] = useLocation();
  const hasNewer = useProgram((program) => program.hasNewer);
  const keepsPlaces = useWishForPlaces((wish) => wish.keeps);
  const take = () => {
    if (!takeNewer()) notify('Not yet: the last edit is still being saved.');
  };
  const places = () =>
    notify(
      turnPlaces()
        ? 'Photos added from now on keep where they were taken: whoever gets one can read it.'
        : 'Photos added from now on do not say where they were taken.',
    );
  const items = [
    ...ITEMS,
    {
      name: keepsPlaces ? 'Leave out where photos were taken' : 'Keep where photos were taken',
      does: places,
    },
    { name: 'About Footmark', does: () => go('/about') },
    ...(hasNewer ? [{ name: 'A newer version is there: take it', does: take }] : []),
  ];
  return (
    <MenuTrigger>
      <Button className={controls.icon ?? ''} aria-label="More">
        <EllipsisVertical size={20} aria-hidden />
      </Button>
      <Popover className={controls.popover ?? ''}>
        <Menu className={controls.list ?? ''} aria-label="More">
          {items.map(({ name, does }) => (
            <MenuItem key={name} className={controls.item ?? ''} onAction={does}>
              {name}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
