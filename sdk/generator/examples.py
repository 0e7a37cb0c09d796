"""A short example for each operation whose call is not plain from its signature; a test runs them all."""

from __future__ import annotations

import re

_SHEET = """\
# `house` is a types.CutListRequest.
pdf = client.{operation}(house, accept="application/pdf", paper="a4")
Path("{name}.pdf").write_bytes(pdf)"""

EXAMPLES: dict[str, str] = {
    "compute_cut_list": """\
trim = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
readings = types.Readings(jamb_width="24 in", jamb_height="46 1/4 in")
window = types.HouseOpening(mark="P1", trim="plain", bottom="casing", readings=readings)
yard = types.Stock(profile="casing", sticks=[types.Stick(length="8 ft", price="9.20")])
house = types.CutListRequest(openings=[window], trim_specs={"plain": trim}, stock=[yard])
cut_list = client.compute_cut_list(house)
pdf = client.compute_cut_list(house, accept="application/pdf")
# `print` gets each better plan on the way.
cut_list = client.follow(calls.compute_cut_list(house), print)""",
    "compute_opening": """\
trim = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
readings = types.Readings(jamb_width="24 in", jamb_height="46 1/4 in")
window = types.OpeningRequest(mark="P1", trim=trim, bottom="casing", readings=readings)
worked_out = client.compute_opening(window)
for piece in worked_out.pieces:
    print(piece.quantity, piece.key, piece.overall)
svg = client.compute_opening(window, accept="image/svg+xml", drawing="elevation")""",
    "read_lengths": """\
answer = client.read_lengths(types.LengthsRequest(lengths=["30 5/8 in", "778 mm"]))
print(answer.lengths[1], answer.lengths[1].to("mm"))""",
    "create_schedule": """\
# The key is one of your own: sent again, even from another process, the house is kept once.
house = client.create_schedule(types.NewSchedule(name="Heron Cottage"), idempotency_key="order-1041")
print(house.value.id, house.etag)""",
    "list_schedules": """\
for line in client.list_schedules(name="heron"):
    print(line.id, line.name, line.opening_count)""",
    "replace_schedule": """\
house = client.get_schedule(schedule_id)
thinner = house.value.house.changed(kerf="3/32 in")
house = client.replace_schedule(schedule_id, thinner, if_match=house, why="another blade")""",
    "get_opening": """\
k1 = client.get_opening(schedule_id, "K1")
print(k1.value.readings.jamb_width)
k1 = client.get_opening(schedule_id, "K1", if_none_match=k1)""",
    "replace_opening": """\
k1 = client.get_opening(schedule_id, "K1")
readings = k1.value.readings.changed(jamb_width="30 3/4 in")
try:
    k1 = client.replace_opening(schedule_id, "K1", k1.value.changed(readings=readings), if_match=k1)
except VersionConflict as conflict:
    print(conflict.current.value.readings, "stands by now")""",
    "import_openings": """\
table = Path("openings.csv").read_text(encoding="utf-8")
try:
    tried = client.import_openings(schedule_id, table, dry_run=True)
    print(tried.value.added)
except problems.InvalidRequest as refusal:
    for fault in refusal.errors:
        print(fault.row, fault.column, fault.detail)""",
    "export_schedule": """\
house = client.export_schedule(schedule_id)
copy = client.create_schedule(house.value.changed(name="Heron Cottage, again"))
table = client.export_schedule(schedule_id, accept="text/csv")
Path("openings.csv").write_bytes(table.value)""",
    "compute_schedule_cut_list": """\
work = client.compute_schedule_cut_list(schedule_id, include=["saw_order"])
for line in work.value.cut_list.buy:
    print(line.quantity, "x", line.length, line.profile, line.cost)""",
    "cut_sticks": """\
plan = client.make_plan(schedule_id, types.PlanAsked())
first = types.CutSticks(sticks=[plan.value.sticks[0].name], by="shop saw")
made = client.cut_sticks(schedule_id, first)
print(made.lengths, made.notes)""",
    "claim_stick": """\
plan = client.make_plan(schedule_id, types.PlanAsked())
name = plan.value.sticks[0].name
stick = client.claim_stick(schedule_id, name, types.Claim(by="shop saw", seconds=600))
print(stick.claimed_until, stick.notes)""",
    "put_length": """\
came = types.LengthOnHand(profile="casing", length="14 ft", ordered=10, delivered=6, paid="16.10")
lot = client.put_length(schedule_id, "yard 1", came)
print(lot.value.available, lot.value.notes)""",
    "record_work": """\
head = types.PieceDone(opening="K1", piece="head_casing", state="cut")
made = client.record_work(schedule_id, types.Work(pieces=[head]))""",
    "get_schedule_sheet": """\
sheet = client.get_schedule_sheet(schedule_id, "stick-sheet", accept="application/pdf")
Path("stick-sheet.pdf").write_bytes(sheet.value)""",
    "get_opening_drawing": """\
drawing = client.get_opening_drawing(schedule_id, "K1", drawing="piece", piece="head_casing")
Path("head.svg").write_bytes(drawing.value)""",
    "restore_revision": """\
house = client.get_schedule(schedule_id)
client.restore_revision(schedule_id, {"revision": 1}, if_match=house)""",
    "make_labels": """\
# `labels` is a types.LabelsRequest: a house and, where the paper is not a common one, its grid.
pdf = client.make_labels(labels, accept="application/pdf")
Path("labels.pdf").write_bytes(pdf)""",
    **{
        f"make_{name.replace('-', '_')}": _SHEET.format(operation=f"make_{name.replace('-', '_')}", name=name)
        for name in ("cost-sheet", "opening-sheet", "measure-sheet", "stick-sheet", "material-list")
    },
}
"""By operation, for the sync client. `client` is one; nothing answered is used in the line that asks for it."""


def example(operation: str, *, asynchronous: bool) -> str:
    """The example of an operation, as a docstring has it; empty where there is none."""
    text = EXAMPLES.get(operation, "")
    if asynchronous:
        text = re.sub(r"\bfor (\w+) in client\.list_", r"async for \1 in client.list_", text)
        text = re.sub(r"\bclient\.(?!list_)", "await client.", text)
    return "Example:\n" + text if text else ""
