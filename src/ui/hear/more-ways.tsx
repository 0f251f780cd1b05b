import { useState } from "react";
import {
  Button,
  Header,
  Menu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
  Text,
} from "react-aria-components";
import type { Player, SectionId } from "../../band/index.ts";
import { chooseWho, hearView, letSoundUnder } from "../actions/hear.ts";
import { saveView } from "../actions/save-sound.ts";
import { everybody, useSound, type Backing, type Way } from "../actions/sound-state.ts";
import { usePage } from "../store.ts";
import { WhoSheet } from "./who-sheet.tsx";
import { backingTexts, capital, idsOfSection, sectionChosen } from "./who-words.ts";

const moreWays: readonly { readonly way: Way; readonly text: string }[] = [
  { way: "crescendo", text: "Crescendo, p to ff" },
  { way: "rolled-from-top", text: "Rolled from the top" },
];

/** The ways to hear that are not at hand on the bar, who is heard, and over what. */
export function MoreWays() {
  const players = usePage((state) => state.history.present.inquiry.players);
  const hasView = usePage((state) => state.view !== null);
  const [isChoosing, setChoosing] = useState(false);
  return (
    <>
      <MenuTrigger>
        <Button className="link push" isDisabled={!hasView}>
          More ways
        </Button>
        <Popover className="pop" placement="top end">
          <Menu className="pick-rows hear-menu" aria-label="More ways to hear">
            <WayRows />
            <BackingRows />
            <WhoRows players={players} onChoose={() => setChoosing(true)} />
            <MenuSection>
              <Header className="menu-head">File</Header>
              <MenuItem className="pick-row" id="save" textValue="Save" onAction={saveView}>
                <Text slot="label">Save the sound</Text>
                <Text slot="description">this voicing as a WAV file, as heard last</Text>
              </MenuItem>
            </MenuSection>
          </Menu>
        </Popover>
      </MenuTrigger>
      <WhoSheet players={players} isOpen={isChoosing} onOpen={setChoosing} />
    </>
  );
}

function WayRows() {
  return (
    <MenuSection>
      <Header className="menu-head">Ways</Header>
      {moreWays.map(({ way, text }) => (
        <MenuItem className="pick-row" key={way} id={way} onAction={() => hearView(way)}>
          {text}
        </MenuItem>
      ))}
    </MenuSection>
  );
}

function BackingRows() {
  const backing = useSound((state) => state.backing);
  return (
    <MenuSection
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[backing]}
      onSelectionChange={(keys) => {
        const [key] = keys === "all" ? [] : [...keys];
        if (key !== undefined) letSoundUnder(key as Backing);
      }}
    >
      <Header className="menu-head">Under the horns</Header>
      {Object.entries(backingTexts).map(([id, text]) => (
        <MenuItem className="pick-row" key={id} id={id} textValue={text}>
          <Text slot="label">{text}</Text>
        </MenuItem>
      ))}
    </MenuSection>
  );
}

const all = "everybody";
const choose = "choose";

/** Everybody, one section alone, or players to be chosen one by one. */
function WhoRows(props: { readonly players: readonly Player[]; readonly onChoose: () => void }) {
  const { players, onChoose } = props;
  const who = useSound((state) => state.who);
  const sections = [...new Set(players.map(({ section }) => section))];
  const section = who.others === "silent" ? sectionChosen(players, who) : undefined;
  const picked = who.playerIds.length === 0 ? all : (section ?? choose);
  const pick = (key: string) => {
    if (key === choose) return onChoose();
    const playerIds = idsOfSection(players, key as SectionId);
    chooseWho(key === all ? everybody : { playerIds, others: "silent" });
  };
  const rows = [
    { id: all, text: "Everybody" },
    ...sections.map((id) => ({ id, text: `${capital(id)} alone` })),
    { id: choose, text: "Players of your choice …" },
  ];
  return (
    <MenuSection selectionMode="single" selectedKeys={[picked]}>
      <Header className="menu-head">Who is heard</Header>
      {rows.map(({ id, text }) => (
        <MenuItem className="pick-row" key={id} id={id} textValue={text} onAction={() => pick(id)}>
          <Text slot="label">{text}</Text>
        </MenuItem>
      ))}
    </MenuSection>
  );
}
