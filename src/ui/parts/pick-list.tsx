import type { ReactNode } from "react";
import {
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Text,
} from "react-aria-components";

/** One row of a list to pick from. */
export interface PickRow {
  readonly id: string;
  readonly text: string;
  /** A second line, in plain words. */
  readonly detail?: string;
}

/** A control that opens a list of which one row is picked. */
export function PickList(props: {
  readonly label: string;
  readonly rows: readonly PickRow[];
  readonly picked: string;
  readonly onPick: (id: string) => void;
  readonly isLabelSeen?: boolean;
  readonly className?: string;
  readonly children?: ReactNode;
}) {
  const { label, rows, picked, onPick, isLabelSeen = true, className = "pick", children } = props;
  return (
    <Select
      className={className}
      selectedKey={picked}
      onSelectionChange={(key) => {
        if (key !== null && key !== picked) onPick(String(key));
      }}
      {...(isLabelSeen ? {} : { "aria-label": label })}
    >
      {isLabelSeen && <Label>{label}</Label>}
      <Button className="pick-button">
        <SelectValue>{({ selectedText }) => children ?? selectedText}</SelectValue>
      </Button>
      <Popover className="pop" offset={4}>
        <ListBox className="pick-rows">
          {rows.map((row) => (
            <ListBoxItem key={row.id} id={row.id} textValue={row.text} className="pick-row">
              <Text slot="label">{row.text}</Text>
              {row.detail !== undefined && <Text slot="description">{row.detail}</Text>}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
