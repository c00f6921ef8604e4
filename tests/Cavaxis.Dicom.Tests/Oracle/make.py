"""Writes DICOM files for the tests of Cavaxis.Dicom: every pixel is invented. Usage: make.py OUT"""
import os
import subprocess
import sys
import warnings
from io import BytesIO

import numpy as np
from PIL import Image
from pydicom.dataset import FileDataset, FileMetaDataset
from pydicom.encaps import encapsulate
from pydicom.sequence import Sequence
from pydicom.dataset import Dataset
from pydicom.uid import (DeflatedExplicitVRLittleEndian, ExplicitVRBigEndian, ExplicitVRLittleEndian, ImplicitVRLittleEndian, JPEG2000Lossless, RLELossless)

warnings.simplefilter("ignore")
US, US_LOOP, CT = "1.2.840.10008.5.1.4.1.1.6.1", "1.2.840.10008.5.1.4.1.1.3.1", "1.2.840.10008.5.1.4.1.1.2"
OUT = sys.argv[1]
RANDOM = np.random.default_rng(7)
COUNT = 0


def base(sop, modality, syntax):
    global COUNT
    COUNT += 1
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = sop
    meta.MediaStorageSOPInstanceUID = f"1.2.3.4.{COUNT}"
    meta.TransferSyntaxUID = syntax
    meta.ImplementationClassUID = "1.2.3.4"
    ds = FileDataset(None, {}, file_meta=meta, preamble=b"\0" * 128)
    ds.is_little_endian = syntax != ExplicitVRBigEndian
    ds.is_implicit_VR = syntax == ImplicitVRLittleEndian
    ds.SOPClassUID, ds.SOPInstanceUID, ds.Modality = sop, f"1.2.3.4.{COUNT}", modality
    ds.StudyInstanceUID, ds.SeriesInstanceUID, ds.FrameOfReferenceUID = "1.2.3.5.1", "1.2.3.5.2", "1.2.3.5.3"
    ds.PatientName, ds.PatientID, ds.PatientBirthDate, ds.PatientSex = "Invented^Person", "INV-0042", "19600229", "F"
    ds.StudyDate, ds.StudyTime, ds.AccessionNumber, ds.InstitutionName = "20260102", "101112", "ACC-77", "Invented House"
    ds.ReferringPhysicianName, ds.OperatorsName, ds.StudyDescription = "Invented^Referrer", "Invented^Operator", "Invented study"
    ds.add_new(0x00091001, "LO", "INV-0042 in a private place")
    ds.add_new(0x00090010, "LO", "INVENTED")
    ref = Dataset()
    ref.ReferencedSOPClassUID, ref.ReferencedSOPInstanceUID, ref.PatientName = sop, "1.2.3.4.1", "Invented^Nested"
    ds.SourceImageSequence = Sequence([ref])
    return ds


def pixels(ds, array, colours, stored=None, signed=False, planar=0, frames=1):
    ds.SamplesPerPixel = 3 if colours in ("RGB", "YBR_FULL", "YBR_FULL_422") else 1
    ds.PhotometricInterpretation = colours
    if ds.SamplesPerPixel == 3:
        ds.PlanarConfiguration = planar
    ds.BitsAllocated = array.dtype.itemsize * 8
    ds.BitsStored = stored or ds.BitsAllocated
    ds.HighBit, ds.PixelRepresentation = ds.BitsStored - 1, int(signed)
    if frames > 1:
        ds.NumberOfFrames, ds.FrameTime = frames, 40
    raw = (array if ds.is_little_endian else array.byteswap()).tobytes()
    ds.PixelData = raw + (b"\0" if len(raw) % 2 else b"")
    ds["PixelData"].VR = "OW" if ds.BitsAllocated > 8 else "OB"


def save(ds, name):
    path = os.path.join(OUT, name + ".dcm")
    ds.save_as(path, write_like_original=False)
    return path


def grey8(frames=1):
    y, x = np.mgrid[0:48, 0:64]
    return np.stack([((x * 4 + y + 9 * f) % 256).astype("u1") for f in range(frames)])


def still(name, array, colours, syntax=ExplicitVRLittleEndian, rows=48, columns=64, sop=US, modality="US", **more):
    ds = base(sop, modality, syntax)
    ds.Rows, ds.Columns = rows, columns
    pixels(ds, array, colours, **more)
    return ds, name


def regions(ds):
    r = Dataset()
    r.RegionSpatialFormat, r.RegionDataType, r.RegionFlags = 1, 1, 2
    r.RegionLocationMinX0, r.RegionLocationMinY0, r.RegionLocationMaxX1, r.RegionLocationMaxY1 = 8, 10, 55, 40
    r.PhysicalUnitsXDirection = r.PhysicalUnitsYDirection = 3
    r.PhysicalDeltaX = r.PhysicalDeltaY = 0.025
    r.ReferencePixelX0, r.ReferencePixelY0 = 24, 0
    ds.SequenceOfUltrasoundRegions = Sequence([r])


def run(*command):
    subprocess.run(command, check=True, capture_output=True)


def main():
    rgb = RANDOM.integers(0, 256, (48, 64, 3)).astype("u1")
    smooth = np.stack([grey8()[0], np.flipud(grey8()[0]) // 2, 255 - grey8()[0]], axis=-1).astype("u1")
    for name, syntax in (("explicit", ExplicitVRLittleEndian), ("implicit", ImplicitVRLittleEndian), ("big", ExplicitVRBigEndian), ("deflated", DeflatedExplicitVRLittleEndian)):
        ds, n = still(name, grey8(), "MONOCHROME2", syntax)
        regions(ds)
        save(ds, n)
    words = RANDOM.integers(0, 4096, (48, 64)).astype("<u2")
    signed = RANDOM.integers(-2000, 3000, (48, 64)).astype("<i2")
    ds, n = still("ct12", words, "MONOCHROME2", sop=CT, modality="CT", stored=12)
    ds.RescaleSlope, ds.RescaleIntercept, ds.WindowCenter, ds.WindowWidth = "1", "-1024", "40", "400"
    save(ds, n)
    ds, n = still("ct16signed", signed, "MONOCHROME2", sop=CT, modality="CT", signed=True)
    ds.RescaleSlope, ds.RescaleIntercept, ds.WindowCenter, ds.WindowWidth = "2", "-100", "300", "1500"
    save(ds, n)
    save(*still("big16signed", signed, "MONOCHROME2", ExplicitVRBigEndian, signed=True))
    save(*still("inverse", grey8(), "MONOCHROME1"))
    save(*still("loop", grey8(7), "MONOCHROME2", sop=US_LOOP, frames=7))
    save(*still("rgb", rgb, "RGB"))
    save(*still("planar", np.ascontiguousarray(rgb.transpose(2, 0, 1)), "RGB", planar=1))
    save(*still("ybr", rgb, "YBR_FULL"))
    shared = RANDOM.integers(0, 256, (48, 32, 4)).astype("u1")
    save(*still("ybr422", shared, "YBR_FULL_422"))
    ds, n = still("palette8", grey8(), "PALETTE COLOR")
    for c, name in enumerate(("Red", "Green", "Blue")):
        setattr(ds, name + "PaletteColorLookupTableDescriptor", [256, 0, 8])
        setattr(ds, name + "PaletteColorLookupTableData", ((np.arange(256) * (c + 1)) % 256).astype("u1").tobytes())
    save(ds, n)
    ds, n = still("palette16", (words % 300 + 50).astype("<u2"), "PALETTE COLOR")
    for c, name in enumerate(("Red", "Green", "Blue")):
        setattr(ds, name + "PaletteColorLookupTableDescriptor", [300, 50, 16])
        setattr(ds, name + "PaletteColorLookupTableData", ((np.arange(300) * 200 * (c + 1)) % 65536).astype("<u2").tobytes())
    save(ds, n)
    for name, array, colours, more in (
        ("rle8", grey8(), "MONOCHROME2", {}), ("rle16", words, "MONOCHROME2", {"stored": 12}), ("rlergb", rgb, "RGB", {}), ("rleloop", grey8(5), "MONOCHROME2", {"frames": 5, "sop": US_LOOP})):
        ds, n = still(name, array, colours, **more)
        ds.compress(RLELossless)
        save(ds, n)
    for name, frames in (("j2k8", [grey8()[0]]), ("j2k16", [words]), ("j2kloop", list(grey8(3))), ("j2ksplit", list(grey8(3)))):
        ds, n = still(name, np.stack(frames), "MONOCHROME2", JPEG2000Lossless, frames=len(frames), sop=US_LOOP if len(frames) > 1 else US)
        coded = []
        for frame in frames:
            target = BytesIO()
            Image.fromarray(frame).save(target, "JPEG2000", irreversible=False, no_jp2=True)
            coded.append(target.getvalue())
        ds.PixelData = encapsulate(coded, fragments_per_frame=2 if name == "j2ksplit" else 1)
        ds["PixelData"].VR, ds["PixelData"].is_undefined_length = "OB", True
        save(ds, n)
    plain = {
        "grey": save(*still("plain-grey", grey8(), "MONOCHROME2")),
        "loop": save(*still("plain-loop", grey8(4), "MONOCHROME2", sop=US_LOOP, frames=4)),
        "colour": save(*still("plain-colour", smooth, "RGB")),
        "words": save(*still("plain-words", words, "MONOCHROME2", stored=12)),
        "signed": save(*still("plain-signed", signed, "MONOCHROME2", signed=True)),
    }
    for name, tool, options, source in (
        ("jpeg-lossless", "dcmcjpeg", ["+e1"], "grey"), ("jpeg-lossless14", "dcmcjpeg", ["+el"], "words"), ("jpeg-lossless-signed", "dcmcjpeg", ["+e1"], "signed"),
        ("jpeg-lossless-rgb", "dcmcjpeg", ["+e1"], "colour"), ("jpeg-lossless-loop", "dcmcjpeg", ["+e1"], "loop"), ("jpeg-baseline", "dcmcjpeg", ["+eb"], "grey"),
        ("jpeg-baseline-colour", "dcmcjpeg", ["+eb", "+cy"], "colour"), ("jpeg-extended", "dcmcjpeg", ["+ee"], "words"), ("jpegls", "dcmcjpls", [], "grey"),
        ("jpegls-words", "dcmcjpls", [], "words"), ("jpegls-loop", "dcmcjpls", [], "loop"), ("jpegls-near", "dcmcjpls", ["+en"], "grey"), ("jpegls-rgb", "dcmcjpls", [], "colour")):
        run(tool, *options, plain[source], os.path.join(OUT, name + ".dcm"))
    for folder, places, change in (
        ("even", [0, 2.5, 5, 7.5, 10], None), ("missing", [0, 2.5, 5, 10, 12.5], None), ("uneven", [0, 2.5, 5, 8.7, 11.2], None), ("doubled", [0, 2.5, 2.5, 5, 7.5], None),
        ("mixed", [0, 2.5, 5, 7.5], "series"), ("unlike", [0, 2.5, 5, 7.5], "spacing"), ("turned", [0, 2.5, 5, 7.5], "table"), ("blank", [0, 2.5, 5], "blank"), ("scout", [0, 2.5, 5], "scout")):
        os.makedirs(os.path.join(OUT, folder))
        for k, z in enumerate(places):
            hu = (signed // 2 + 10 * k).astype("<i2")
            ds, _ = still("", hu, "MONOCHROME2", sop=CT, modality="CT", signed=True)
            ds.PixelSpacing, ds.ImageOrientationPatient, ds.ImagePositionPatient = [0.8, 0.7], [1, 0, 0, 0, 1, 0], [-20, -30, 100 + z]
            ds.PatientPosition, ds.SliceThickness = "HFS", 2.5
            ds.RescaleSlope, ds.RescaleIntercept, ds.InstanceNumber = "1", str(k), len(places) - k
            if change == "series" and k == 3:
                ds.SeriesInstanceUID = "1.2.3.5.9"
            if change == "spacing" and k == 2:
                ds.PixelSpacing = [0.9, 0.7]
            if change == "table":
                ds.PatientPosition = "FFS"
            if change == "blank":
                ds.SOPClassUID = ds.SeriesInstanceUID = ""
            if change == "scout" and k == 1:
                ds.ImageOrientationPatient = [0, 1, 0, 0, 0, -1]
            # Names of files say nothing about the order.
            save(ds, os.path.join(folder, f"{(k * 7) % 5}-{k}"))


main()
