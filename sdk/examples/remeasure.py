"""A window is measured again after its trim was cut: what is wrong now, what can be cut again, and what to buy."""

import json
from pathlib import Path

from longpoint_sdk import Client, types

HERE = Path(__file__).parent


def shown(place: types.PieceNeeded) -> str:
    return f"{place.opening} {place.piece} {place.length}"


with Client() as client:
    window = {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"}
    openings = [{"mark": mark, "trim": "painted", "readings": window} for mark in ("K1", "K2")]
    house = json.loads((HERE / "house.json").read_text())
    id = client.create_schedule({**house, "name": "Plover Cottage", "openings": openings}).value.id

    plan = client.compute_schedule_cut_list(id).value.cut_list
    cut = [
        types.PieceDone(opening=one.mark, piece=piece.key, state="cut")
        for one in plan.openings
        for piece in one.pieces
    ]
    client.record_work(id, types.Work(pieces=cut), why="all of it cut")

    k1 = client.get_opening(id, "K1")
    narrower = k1.value.changed(readings=k1.value.readings.changed(jamb_width="30 1/2 in"))
    client.replace_opening(id, "K1", narrower, if_match=k1, why="measured again")

    left = client.compute_schedule_cut_list(id).value
    print(f"{left.right} of {left.needed} pieces are as they should be")
    for wrong in left.wrong:
        was = f"{wrong.piece.opening} {wrong.piece.piece} {wrong.piece.length}"
        print(
            f"wrong: {was}; "
            + (f"cut again into {shown(wrong.recut_into)}" if wrong.recut_into else "no use left")
        )
    for place in left.cut_again:
        print(f"cut from stock: {shown(place)}")
    for line in left.cut_list.buy:
        print(f"buy {line.quantity} x {line.length.to('ft')} {line.profile}, {line.cost}")
