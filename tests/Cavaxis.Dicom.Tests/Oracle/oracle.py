"""Reads DICOM files with pydicom (and dcmtk where pydicom has no decoder) for the tests of Cavaxis.Dicom.

Usage: oracle.py OUT FILE...   Writes OUT/index.json and OUT/N-F.raw (stored values) and OUT/N-F.rgb (8-bit colours) per frame.
"""
import hashlib
import json
import os
import subprocess
import sys
import warnings

import numpy as np
import pydicom
from pydicom.pixel_data_handlers.util import apply_color_lut, convert_color_space

warnings.simplefilter("ignore")
MOST_FRAMES = 3
BY_DCMTK = {
    "1.2.840.10008.1.2.4.51": "dcmdjpeg",
    "1.2.840.10008.1.2.4.57": "dcmdjpeg",
    "1.2.840.10008.1.2.4.70": "dcmdjpeg",
    "1.2.840.10008.1.2.4.80": "dcmdjpls",
    "1.2.840.10008.1.2.4.81": "dcmdjpls",
}
REGION = [
    "RegionSpatialFormat", "RegionDataType", "RegionLocationMinX0", "RegionLocationMinY0", "RegionLocationMaxX1", "RegionLocationMaxY1",
    "PhysicalUnitsXDirection", "PhysicalUnitsYDirection", "PhysicalDeltaX", "PhysicalDeltaY",
]


def numbers(value):
    if value is None or value == "":
        return None
    return [float(v) for v in value] if isinstance(value, (list, tuple, pydicom.multival.MultiValue)) else float(value)


def one(path, number, out):
    ds = pydicom.dcmread(path)
    syntax = str(ds.file_meta.get("TransferSyntaxUID", ""))
    entry = {
        "path": path,
        "sha256": hashlib.sha256(open(path, "rb").read()).hexdigest(),
        "transferSyntax": syntax,
        "rows": int(ds.Rows),
        "columns": int(ds.Columns),
        "frames": int(ds.get("NumberOfFrames", 1) or 1),
        "modality": str(ds.get("Modality", "")),
        "pixelSpacing": numbers(ds.get("PixelSpacing")),
        "frameTime": numbers(ds.get("FrameTime")),
        "position": numbers(ds.get("ImagePositionPatient")),
        "orientation": numbers(ds.get("ImageOrientationPatient")),
        "slope": numbers(ds.get("RescaleSlope")),
        "intercept": numbers(ds.get("RescaleIntercept")),
        "regions": [[float(r.get(name, 0)) for name in REGION] for r in ds.get("SequenceOfUltrasoundRegions", [])],
        "written": [],
    }
    if syntax in BY_DCMTK:
        plain = os.path.join(out, f"{number}.plain.dcm")
        tool = [BY_DCMTK[syntax]] + (["+cn"] if BY_DCMTK[syntax] == "dcmdjpeg" else []) + [path, plain]
        if subprocess.run(tool, capture_output=True).returncode == 0:
            ds = pydicom.dcmread(plain)
    try:
        pixels = ds.pixel_array
    except Exception as failure:  # pydicom has no decoder for it, or refuses it
        entry["undecoded"] = type(failure).__name__ + ": " + str(failure)[:200]
        return entry
    samples = int(ds.get("SamplesPerPixel", 1))
    if entry["frames"] == 1:
        pixels = pixels[np.newaxis]
    colours = str(ds.PhotometricInterpretation)
    entry["colours"] = colours
    for f in range(min(MOST_FRAMES, pixels.shape[0])):
        frame = pixels[f]
        frame.astype("<i8").tofile(os.path.join(out, f"{number}-{f}.raw"))
        shown = None
        if colours.startswith("PALETTE"):
            shown = apply_color_lut(frame, ds)
            shown = (shown >> 8).astype("u1") if shown.dtype.itemsize == 2 and shown.max() > 255 else shown.astype("u1")
        elif samples == 3 and frame.dtype == np.uint8:
            shown = convert_color_space(frame, colours, "RGB") if colours in ("YBR_FULL", "YBR_FULL_422") else frame
        if shown is not None:
            shown.astype("u1").tofile(os.path.join(out, f"{number}-{f}.rgb"))
        entry["written"].append({"shown": shown is not None})
    return entry


def main():
    out = sys.argv[1]
    index = []
    for number, path in enumerate(sys.argv[2:]):
        try:
            index.append(one(path, number, out))
        except Exception as failure:  # no DICOM for pydicom, or no picture
            index.append({"path": path, "unread": type(failure).__name__ + ": " + str(failure)[:200]})
    with open(os.path.join(out, "index.json"), "w", encoding="utf-8") as target:
        json.dump(index, target)


main()
