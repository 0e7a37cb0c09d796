"""Starts the service, sends it the demo house as any caller would, prints the cut list and where its sheets are."""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import time
import urllib.error
import urllib.request
from pathlib import Path
from typing import Any

from stored_house import keep_house, plan_line, sheet_lines

HERE = Path(__file__).parent
READY_WITHIN = 30.0


def main() -> int:
    parser = argparse.ArgumentParser(
        prog="deploy/run", description="Start Longpoint and trim the demo house."
    )
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument("--once", action="store_true", help="end after printing")
    options = parser.parse_args()
    address = f"http://127.0.0.1:{options.port}"
    root = HERE.parent.parent
    environment = {
        "LONGPOINT_ACCESS_LOG": "false",
        "LONGPOINT_LOG_LEVEL": "warning",
        "LONGPOINT_DATABASE": f"sqlite:///{root}/longpoint.sqlite3",
        **os.environ,
    }
    longpoint = [sys.executable, "-m", "longpoint"]
    subprocess.run([*longpoint, "migrate"], cwd=root, env=environment, check=True, stdout=subprocess.DEVNULL)
    service = subprocess.Popen(
        [*longpoint, "serve", "--host", "127.0.0.1", "--port", str(options.port)], cwd=root, env=environment
    )
    try:
        wait_until_ready(service, address)
        house = json.loads((HERE / "house.json").read_bytes())
        print_cut_list(ask(address, "/v1/cut-list", house))
        schedule = keep_house(lambda path, body: ask(address, path, body), house)
        plan = ask(address, f"/v1/schedules/{schedule}/plans", {})
        print("", plan_line(plan), *sheet_lines(address, schedule), sep="\n")
        print(f"\nDocs: {address}/docs   OpenAPI: {address}/openapi.json")
        if options.once:
            return 0
        print("Serving until Ctrl-C.")
        return service.wait()
    except KeyboardInterrupt:
        return 0
    finally:
        service.terminate()
        service.wait()


def wait_until_ready(service: subprocess.Popen[bytes], address: str) -> None:
    started = time.monotonic()
    while True:
        if service.poll() is not None:
            sys.exit(f"The service ended at once, with {service.returncode}: is something else on {address}?")
        try:
            urllib.request.urlopen(f"{address}/health/ready", timeout=5).close()
            return
        except OSError:
            if time.monotonic() - started > READY_WITHIN:
                sys.exit(f"The service was not ready within {READY_WITHIN:.0f} s.")
            time.sleep(0.05)


def ask(address: str, path: str, body: Any) -> Any:
    data = None if body is None else json.dumps(body).encode()
    headers = {"Content-Type": "application/json"} if data else {}
    request = urllib.request.Request(address + path, data=data, headers=headers)
    try:
        with urllib.request.urlopen(request, timeout=60) as answer:
            return json.load(answer)
    except urllib.error.HTTPError as refusal:
        sys.exit(f"{path} refused the house: {refusal.read().decode()}")


def print_cut_list(answer: dict[str, Any]) -> None:
    openings = answer["openings"]
    count = sum(one["count"] for one in openings)
    rooms = list(dict.fromkeys(one["room"] for one in openings))
    print(f"CUT LIST   {count} openings, {len(rooms)} rooms")
    for room in rooms:
        print(f"\n{room.upper()}")
        for one in openings:
            if one["room"] == room:
                print_opening(one)
    print("\nSTICKS")
    for plan in answer["plans"]:
        print_plan(plan, answer["currency"])
    print("\nTO BUY")
    for line in answer["buy"]:
        print(
            f"  {line['quantity']:>3} x {line['length']['text']:<8} {line['profile']:<18} {line['cost']:>8}"
        )
    print(f"  {'total':<32} {answer['cost']:>8} {answer['currency']}")
    for note in [*answer["notes"], *(caution["text"] for caution in answer["cautions"])]:
        print(f"- {note}")


def print_opening(one: dict[str, Any]) -> None:
    times = f"   Qty {one['count']}" if one["count"] > 1 else ""
    print(f"  {one['mark']}{times}")
    for piece in one["pieces"]:
        ends = "  |  ".join(end_text(end) for end in piece["ends"])
        print(f"    {piece['quantity']} {piece['title']:<22} {size(piece):<46} {ends}")
    for note in one["notes"]:
        print(f"    - {note}")


def size(piece: dict[str, Any]) -> str:
    short, long = piece["short_point"]["text"], piece["long_point"]["text"]
    text = long if short == long else f"short {short}, long {long}"
    return f"{text}, rip {piece['rip_width']['text']}" if piece["rip_width"] else text


def end_text(end: dict[str, Any]) -> str:
    turns = [
        f"{word} {end[f'{word}_direction']} {end[f'{word}_degrees']:.1f}°"
        for word in ("miter", "bevel")
        if end[f"{word}_direction"]
    ]
    text = f"{end['on_saw']}: {end['at']} {' and '.join(turns) or end['cut']}"
    if end["notch"]:
        text += f", notch {end['notch']['depth']['text']} deep, {end['notch']['length']['text']} long"
    return text


def print_plan(plan: dict[str, Any], currency: str) -> None:
    proof = "proven cheapest" if plan["proven"] else f"not proven; none costs less than {plan['bound']}"
    print(f"  {plan['profile']}: {plan['cost']} {currency}, {proof}")
    for stick in plan["sticks"]:
        pieces = ", ".join(
            f"{piece['opening']} {piece['piece'].replace('_', ' ').replace('/', ' ')} {piece['length']['text']}"
            for piece in stick["pieces"]
        )
        kind = "on hand" if stick["on_hand"] else "stick"
        kept = " (keep)" if stick["kept"] else ""
        print(
            f"    {kind} {stick['name']}, {stick['length']['text']}: {pieces}; left {stick['offcut']['text']}{kept}"
        )


if __name__ == "__main__":
    sys.exit(main())
