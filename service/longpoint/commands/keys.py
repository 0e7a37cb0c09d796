"""Make, list and revoke bearer keys."""

import argparse
import sys

from longpoint.commands.with_store import add_database, run_with_store
from longpoint.schedules.keys import (
    LOCAL_ACCOUNT,
    SCOPES,
    account_named,
    list_keys,
    make_key,
    revoke_key,
)
from longpoint.schedules.store import Store

NAME = "keys"
HELP = "Make, list and revoke the keys that callers show."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    actions = parser.add_subparsers(required=True, metavar="action")
    create = actions.add_parser("create", help="make a key and show it, once")
    create.add_argument("--account", default=LOCAL_ACCOUNT, type=_name, help="whose things it reaches")
    create.add_argument("--name", required=True, type=_name, help="what revisions it writes are signed with")
    create.add_argument(
        "--scope", action="append", choices=SCOPES, help="what it may do; twice for both; both when left out"
    )
    create.add_argument("--days", type=_days, help="after how many days it ends; never when left out")
    add_database(create)
    create.set_defaults(act=_create)
    listing = actions.add_parser("list", help="list keys, without their secrets")
    add_database(listing)
    listing.set_defaults(act=_list)
    revoke = actions.add_parser("revoke", help="revoke a key for good")
    revoke.add_argument("id", help="the key's id, as the list has it")
    add_database(revoke)
    revoke.set_defaults(act=_revoke)


def run(chosen: argparse.Namespace) -> int:
    """Do what was chosen."""
    return run_with_store(chosen, lambda store: chosen.act(store, chosen))


async def _create(store: Store, chosen: argparse.Namespace) -> int:
    scopes = frozenset(chosen.scope or SCOPES)
    async with store.writing() as connection:
        account = await account_named(connection, chosen.account)
        text = await make_key(connection, account, chosen.name, scopes, chosen.days)
    print("This key is shown once; keep it where secrets are kept:", file=sys.stderr)
    print(text)
    return 0


async def _list(store: Store, _chosen: argparse.Namespace) -> int:
    async with store.reading() as connection:
        rows = await list_keys(connection)
    for row in rows:
        state = f"revoked {row.revoked_at}" if row.revoked_at else f"ends {row.expires_at or 'never'}"
        print(
            f"{row.id}  {row.account}  {row.name}  {row.scopes.replace(' ', '+')}  made {row.created_at}  {state}  "
            f"used {row.last_used_at or 'never'}"
        )
    return 0


async def _revoke(store: Store, chosen: argparse.Namespace) -> int:
    async with store.writing() as connection:
        if await revoke_key(connection, chosen.id):
            return 0
    print(f"longpoint: there is no key {chosen.id}", file=sys.stderr)
    return 1


def _name(text: str) -> str:
    if not text.strip() or len(text) > 120 or not text.isprintable():
        raise argparse.ArgumentTypeError("a name is 1 to 120 printable characters")
    return text


def _days(text: str) -> float:
    days = float(text)
    if not 0 < days <= 36525:
        raise argparse.ArgumentTypeError("days are more than 0 and at most 36525")
    return days
