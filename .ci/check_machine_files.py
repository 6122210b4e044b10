"""Reads files for machines as other programs do (ezdxf, hp2xx) and compares what they see with what was drafted.

Usage: check_machine_files.py FOLDER, which holds the files and lengths.txt that MachineFiles.java wrote.
"""
import glob
import os
import re
import subprocess
import sys

import ezdxf
from ezdxf import path

folder = sys.argv[1]
faults = []
LINES = ("LINE", "ARC", "SPLINE", "LWPOLYLINE", "POLYLINE")


def length(points):
    return sum((a - b).magnitude for a, b in zip(points, points[1:]))


def lines(entities):
    for entity in entities:
        if entity.dxftype() in LINES:
            yield entity.dxf.layer, list(path.make_path(entity).flattening(0.001))


def sums(entities):
    found = {}
    for layer, points in lines(entities):
        found[layer] = found.get(layer, 0) + length(points)
    return found


def expect(what, found, wanted, within):
    if abs(found - wanted) > within:
        faults.append(f"{what}: {found} instead of {wanted}")


wanted = {}
for line in open(os.path.join(folder, "lengths.txt")):
    name, mm = line.rsplit(" ", 1)
    wanted[name] = float(mm)

cut = []
for file in sorted(glob.glob(os.path.join(folder, "*.dxf"))):
    document = ezdxf.readfile(file)
    for error in document.audit().errors:
        faults.append(f"{file}: {error.message}")
    name = os.path.basename(file)
    if name.endswith("-pieces.dxf"):
        blocks = [block for block in document.blocks if not block.name.startswith("*")]
        for block in blocks:
            expect(f"{name}, {block.name}", sums(block).get("1", 0), wanted["block:" + block.name], 0.2)
        if len(blocks) != len([key for key in wanted if key.startswith("block:")]):
            faults.append(f"{name}: {len(blocks)} blocks")
        continue
    expect(f"{name}, unit", document.units, 4, 0)
    found = sums(document.modelspace())
    for layer in wanted:
        if not layer.startswith("block:"):
            expect(f"{name}, {layer}", found.get(layer, 0), wanted[layer], 0.05)
    cut = [points for layer, points in lines(document.modelspace()) if layer == "CUT_LINE"]
    every = [point for _, points in lines(document.modelspace()) for point in points]

# What hp2xx draws, in points of 1/72 inch, y down, against the cut line.
plot = glob.glob(os.path.join(folder, "*.plt"))[0]
picture = os.path.join(folder, "plot.svg")
subprocess.run(["hp2xx", "-q", "-t", "-m", "svg", "-f", picture, plot], check=True)
pen = []
for data in re.findall(r'<path d="([^"]*)"', open(picture).read()):
    points = [(float(x) * 25.4 / 72, -float(y) * 25.4 / 72) for x, y in re.findall(r"([-\d.]+),\s*([-\d.]+)", data)]
    pen.extend(zip(points, points[1:]))
left = min(min(a[0], b[0]) for a, b in pen) - min(p.x for p in every)
low = min(min(a[1], b[1]) for a, b in pen) - min(p.y for p in every)


def distance(x, y, stroke):
    (x0, y0), (x1, y1) = stroke
    dx, dy = x1 - x0, y1 - y0
    square = dx * dx + dy * dy
    t = 0 if square == 0 else max(0, min(1, ((x - x0) * dx + (y - y0) * dy) / square))
    return ((x - x0 - t * dx) ** 2 + (y - y0 - t * dy) ** 2) ** 0.5


worst = 0
looked = 0
for points in cut:
    for point in points[:: max(1, len(points) // 20)]:
        worst = max(worst, min(distance(point.x + left, point.y + low, stroke) for stroke in pen))
        looked += 1
if worst > 0.1 or looked < 40:
    faults.append(f"hp2xx draws the cut line {worst} mm off, at {looked} places")

print(f"{looked} places of the cut line within {worst:.3f} mm of what hp2xx draws")
print("\n".join(faults))
sys.exit(1 if faults else 0)
