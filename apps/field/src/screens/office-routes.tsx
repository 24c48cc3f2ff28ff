import type { PartRole } from "@tapside/records";
import { Route, Switch } from "wouter";
import { CallScreen } from "../call/call.tsx";
import { CalledScreen } from "../call/called.tsx";
import { ChainScreen } from "./chain.tsx";
import { ClaimScreen } from "./claim.tsx";
import { DayScreen, PlanScreen } from "./day-plan.tsx";
import { Gone } from "./gone.tsx";
import { KitchenScreen } from "./kitchen.tsx";
import { LedgerScreen } from "./ledger.tsx";
import { ListInScreen } from "./list-in.tsx";
import { MonthScreen } from "./month.tsx";
import { MovePartScreen, MoveScreen } from "./move.tsx";
import { OwnerScreen } from "./owner.tsx";
import { PointScreen } from "./point.tsx";
import { ScanScreen, StickerScreen } from "./scan/scan.tsx";
import { SensorScreen } from "./sensor.tsx";
import { StickersScreen, UnitStickerScreen } from "./stickers.tsx";
import { UnitAtScreen } from "./unit-at.tsx";
import { UnitDueScreen } from "./unit-due.tsx";
import { UnitPhotosScreen } from "./unit-photos.tsx";
import { VanPartScreen, VanScreen } from "./van.tsx";

/** Screens that open from a unit or from "More": loaded when first wanted, there without a signal all the same. */
export function OfficeRoutes() {
  return (
    <Switch>
      <Route path="/day/:date">{({ date }) => <DayScreen date={date} key={date} />}</Route>
      <Route path="/month/:month/:chain?">
        {({ month, chain }) => (
          <MonthScreen month={month} chain={chain && decodeURIComponent(chain)} key={month + chain} />
        )}
      </Route>
      <Route path="/instrument/:id/ledger">{({ id }) => <LedgerScreen id={id} key={id} />}</Route>
      <Route path="/van" component={VanScreen} />
      <Route path="/van/:role">{({ role }) => <VanPartScreen role={role as PartRole} key={role} />}</Route>
      <Route path="/scan" component={ScanScreen} />
      <Route path="/s/:code">{({ code }) => <StickerScreen code={code} key={code} />}</Route>
      <Route path="/call/:code">{({ code }) => <CallScreen code={code} key={code} />}</Route>
      <Route path="/called/:code/:said">
        {({ said }) => <CalledScreen text={location.hash} key={said} />}
      </Route>
      <Route path="/list" component={ListInScreen} />
      <Route path="/stickers" component={StickersScreen} />
      <Route path="/chain/:name">{({ name }) => <ChainScreen name={decodeURIComponent(name)} />}</Route>
      <Route path="/point/:id">{({ id }) => <PointScreen id={id} key={id} />}</Route>
      <Route path="/site/:id/owner">{({ id }) => <OwnerScreen id={id} key={id} />}</Route>
      <Route path="/part/:id/move">{({ id }) => <MovePartScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/at/:band">
        {({ id, band }) => <UnitAtScreen id={id} band={band} key={id + band} />}
      </Route>
      <Route path="/unit/:id/due">{({ id }) => <UnitDueScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/photos">{({ id }) => <UnitPhotosScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/plan">{({ id }) => <PlanScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/move">{({ id }) => <MoveScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/sticker">{({ id }) => <UnitStickerScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/kitchen/:visit?">
        {({ id, visit }) => <KitchenScreen id={id} from={visit} key={id} />}
      </Route>
      <Route path="/unit/:id/sensor">{({ id }) => <SensorScreen id={id} key={id} />}</Route>
      <Route path="/unit/:id/claim">{({ id }) => <ClaimScreen id={id} key={id} />}</Route>
      <Route component={Gone} />
    </Switch>
  );
}
