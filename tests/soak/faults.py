"""What can be made wrong of a line of Python by a small change: one operator, constant, name or argument."""

import ast
import copy
from collections.abc import Iterator
from typing import Any


def _both_ways(pairs: str) -> dict[str, str]:
    return {a: b for pair in pairs.split(", ") for a, b in (pair.split(), reversed(pair.split()))}


OPERATORS = _both_ways("Eq NotEq, Lt LtE, Gt GtE, Is IsNot, In NotIn, Add Sub, Mult Div, And Or")
NAMES = _both_ways("left right, start end, first last, kept waste, lefts rights, min max, depth other")


def changes(node: Any) -> Iterator[tuple[str, Any, str]]:
    """What can be made wrong of a node: the kind of fault, what is replaced and by what."""

    def other(kind: str, **fields: Any) -> tuple[str, Any, str]:
        made = copy.copy(node)
        for name, value in fields.items():
            setattr(made, name, value)
        return kind, node, ast.unparse(made)

    def turned(op: ast.AST) -> Any:
        return getattr(ast, OPERATORS[type(op).__name__])()

    match node:
        case ast.Compare(ops=[op]) if type(op).__name__ in OPERATORS:
            yield other("comparison", ops=[turned(op)])
        case ast.BoolOp(op=op) | ast.BinOp(op=op) if type(op).__name__ in OPERATORS:
            yield other("operator", op=turned(op))
        case ast.UnaryOp(op=ast.Not() | ast.USub(), operand=operand):
            yield "sign or not dropped", node, ast.unparse(operand)
        case ast.Constant(value=bool() as value):
            yield other("flag", value=not value)
        case ast.Constant(value=int() as value):
            yield other("constant", value=value + 1)
        case ast.Constant(value=str() as value) if value and " " not in value:
            yield other("text", value="")
        case ast.IfExp(body=body, orelse=orelse):
            yield other("branches swapped", body=orelse, orelse=body)
        case ast.If(test=test) | ast.comprehension(ifs=[test]):
            yield "condition", test, f"not ({ast.unparse(test)})"
        case ast.Return(value=ast.expr() as value) if not isinstance(value, ast.Constant):
            yield "answer", value, "None"
        case ast.Expr(value=ast.Call() | ast.Await()):
            yield "left undone", node, "pass"
        case ast.Attribute(attr=name) if name in NAMES:
            yield other("name", attr=NAMES[name])
        case ast.Name(id=name, ctx=ast.Load()) if name in NAMES:
            yield other("name", id=NAMES[name])
        case ast.Call(args=args, keywords=keywords):
            if keywords and keywords[-1].arg:
                yield other("argument dropped", keywords=keywords[:-1])
            if len(args) > 1:
                yield other("arguments swapped", args=[args[1], args[0], *args[2:]])


def walked(node: ast.AST) -> Iterator[ast.AST]:
    """A tree without what is not behavior."""
    skipped: list[Any] = []
    match node:
        case (
            ast.JoinedStr() | ast.Assert() | ast.Import() | ast.ImportFrom() | ast.Expr(value=ast.Constant())
        ):
            return
        case ast.Call(func=ast.Name(id="TypeVar")) | ast.Assign(targets=[ast.Name(id="__all__")]):
            return
        case ast.keyword(arg="description" | "examples" | "detail" | "summary"):
            return
        case ast.AnnAssign(annotation=annotation) | ast.arg(annotation=annotation):
            skipped = [annotation]
        case ast.ClassDef(bases=bases, keywords=keywords, decorator_list=marks):
            skipped = [*bases, *keywords, *marks]
        case ast.FunctionDef(decorator_list=marks) | ast.AsyncFunctionDef(decorator_list=marks):
            skipped = [node.returns, *marks]
    yield node
    for child in ast.iter_child_nodes(node):
        if not any(child is one for one in skipped):
            yield from walked(child)
