import { EllipsisVertical } from 'lucide-react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import controls from '../controls/controls.module.css';
import { pasteThings } from '../session/chosenThings';
import { toggleLeaf } from '../session/workbench';
import { nextTheme } from '../theme/chosenTheme';

const ITEMS = [
  { name: 'History', does: () => toggleLeaf('history') },
  { name: 'Paste what was copied', does: pasteThings },
  { name: 'Paper, night or sun colours', does: nextTheme },
  { name: 'Rules and their sources', does: () => toggleLeaf('rules') },
  { name: 'Keys', does: () => toggleLeaf('keys') },
];

/** What is wanted now and then. */
export function MoreMenu() {
  return (
    <MenuTrigger>
      <Button className={controls.icon ?? ''} aria-label="More">
        <EllipsisVertical size={20} aria-hidden />
      </Button>
      <Popover className={controls.popover ?? ''}>
        <Menu className={controls.list ?? ''} aria-label="More">
          {ITEMS.map(({ name, does }) => (
            <MenuItem key={name} className={controls.item ?? ''} onAction={does}>
              {name}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
