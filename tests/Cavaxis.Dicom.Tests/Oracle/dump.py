"""Lists every element of DICOM files at every depth as pydicom reads them. Usage: dump.py FILE...   Prints JSON: {path: [[tag, vr, text], ...]}"""
import json
import sys
import warnings

import pydicom
from pydicom.datadict import dictionary_VR, keyword_for_tag

warnings.simplefilter("ignore")


def walk(ds, out):
    for e in ds:
        if e.VR == "SQ":
            out.append([f"{int(e.tag):08X}", "SQ", str(len(e.value))])
            for item in e.value:
                walk(item, out)
        elif int(e.tag) != 0x7FE00010:
            out.append([f"{int(e.tag):08X}", e.VR, "\\".join(map(str, e.value)) if e.VM > 1 else str(e.value if e.value is not None else "")])


def main():
    if sys.argv[1] == "--dictionary":
        known = {}
        for tag in sys.argv[2:]:
            try:
                known[tag] = dictionary_VR(int(tag, 16)) + " " + keyword_for_tag(int(tag, 16))
            except KeyError:
                pass
        print(json.dumps(known))
        return
    result = {}
    for path in sys.argv[1:]:
        ds = pydicom.dcmread(path)
        result[path] = []
        walk(ds.file_meta, result[path])
        walk(ds, result[path])
    print(json.dumps(result))


main()
