import { ChevronDown } from 'lucide-react';
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import styles from './controls.module.css';

export type Option<Id extends string> = { readonly id: Id; readonly name: string };

type Props<Id extends string> = {
  readonly label: string;
  readonly options: readonly Option<Id>[];
  readonly value: Id | null;
  readonly onChange: (value: Id) => void;
  readonly placeholder?: string;
  readonly isDisabled?: boolean;
};

/** One of several, from a list that opens. Typing the first letters finds an entry. */
export function Choice<Id extends string>({
  label,
  options,
  value,
  onChange,
  placeholder = 'Choose',
  isDisabled = false,
}: Props<Id>) {
  return (
    <Select
      className={styles.field ?? ''}
      value={value}
      onChange={(key) => {
        const found = options.find((option) => option.id === key);
        if (found !== undefined) onChange(found.id);
      }}
      placeholder={placeholder}
      isDisabled={isDisabled}
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      <Button className={styles.select ?? ''}>
        <SelectValue />
        <ChevronDown size={18} aria-hidden />
      </Button>
      <Popover className={styles.popover ?? ''}>
        <ListBox className={styles.list ?? ''} items={options}>
          {(option) => (
            <ListBoxItem id={option.id} className={styles.item ?? ''} textValue={option.name}>
              {option.name}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
