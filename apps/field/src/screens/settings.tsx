import { Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { undoOrBack } from "./setup-keys.ts";
import { settingsSpecs } from "./specs.ts";

export function SettingsScreen() {
  const { live } = useBook();
  return (
    <Screen title={words.settings} back={undoOrBack(live, "/more")} next={{ label: words.back, to: "/more" }}>
      <Form kind="settings" id="settings" specs={settingsSpecs} />
    </Screen>
  );
}
