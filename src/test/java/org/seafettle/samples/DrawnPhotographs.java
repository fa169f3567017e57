package org.seafettle.samples;

import static org.seafettle.samples.BilgePictures.*;
import static org.seafettle.samples.CoolingPictures.*;
import static org.seafettle.samples.ElectricalPictures.*;
import static org.seafettle.samples.FuelPictures.*;
import static org.seafettle.samples.OilPictures.*;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Every photograph of the samples that our own code draws. */
final class DrawnPhotographs {

  private static final String SUMMER = "+02:00";
  private static final String WINTER = "+01:00";

  private DrawnPhotographs() {}

  static List<Shot> all() {
    return Stream.of(soundPair(), neglected(), halfInspected(), dieselInboard())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Shot> soundPair() {
    String folder = "sound-pair/2026/photos/";
    String day = "2026:09:26 ";
    return List.of(
        wide(
            folder + "hull-number.jpg",
            hullNumber("ZZQ41873C818", 0xdfe3e4),
            day + "09:04:11",
            SUMMER),
        wide(folder + "port-dipstick.jpg", dipstick(AMBER, 0.72, -12), day + "09:31:40", SUMMER),
        wide(folder + "starboard-dipstick.jpg", dipstick(AMBER, 0.66, 9), day + "09:37:02", SUMMER),
        tall(
            folder + "port-telltale.jpg",
            telltale(true, 0x23303c),
            Taken.at(day + "11:12:25").offset(SUMMER)),
        tall(
            folder + "starboard-telltale.jpg",
            telltale(true, 0x23303c),
            Taken.at(day + "11:14:03").offset(SUMMER).turned(6)),
        tall(
            folder + "port-gear-oil.jpg",
            gearOil(GREEN_GEAR_OIL, false),
            Taken.at(day + "12:20:48").offset(SUMMER)),
        tall(
            folder + "battery-port.jpg",
            meter("12.71", "V"),
            Taken.at(day + "08:47:30").offset(SUMMER)),
        wide(folder + "lanyard.jpg", lanyardStop(), day + "11:20:09", SUMMER),
        wide(folder + "bilge.jpg", bilge(false, "2000 L/h"), day + "10:02:57", SUMMER));
  }

  private static List<Shot> neglected() {
    String folder = "neglected/photos/";
    String day = "2026:10:17 ";
    return List.of(
        wide(
            folder + "hull-number.jpg",
            hullNumber("ZZQ30726E809", 0x27445f),
            day + "08:52:16",
            SUMMER),
        new Shot(
            folder + "dipstick.jpg",
            false,
            dipstick(MILKY, 1.12, -9),
            Taken.at(day + "09:40:33").offset(SUMMER).turned(3).somewhere()),
        wide(folder + "filler-cap.jpg", fillerCap(true), day + "09:44:05", SUMMER),
        wide(
            folder + "expansion-tank.jpg",
            expansionTank(GREEN, -0.42, true),
            day + "09:51:47",
            SUMMER),
        wide(folder + "exhaust-elbow.jpg", elbow(true), day + "10:03:20", SUMMER),
        wide(
            folder + "fuel-hose.jpg",
            hose("FUEL HOSE  A1-15  2008", true),
            day + "10:21:51",
            SUMMER),
        tall(
            folder + "separator.jpg",
            separator(GASOLINE, 0.24, true),
            Taken.at(day + "10:30:02").turned(8)),
        wide(folder + "battery-terminals.jpg", battery(true), day + "10:58:40", SUMMER),
        tall(
            folder + "battery-voltage.jpg",
            meter("11.86", "V"),
            Taken.at(day + "08:58:13").offset(SUMMER)),
        wide(folder + "bellows.jpg", bellows(true), day + "11:26:37", SUMMER),
        wide(folder + "bilge.jpg", bilge(true, "500 gal/h"), day + "11:41:12", SUMMER),
        // shown by the seller, not taken on the day: the report has to say so
        tall(folder + "extinguisher.jpg", extinguisher(0.12), Taken.at("2026:08:02 17:05:44")));
  }

  private static List<Shot> halfInspected() {
    String folder = "half-inspected/photos/";
    String day = "2026:11:07 ";
    return List.of(
        wide(
            folder + "hull-number.jpg",
            hullNumber("ZZQ52290K415", 0x7d2f2c),
            day + "13:32:08",
            WINTER),
        new Shot(folder + "dipstick.png", false, dipstick(AMBER, 0.22, -14), Taken.unknown()),
        tall(
            folder + "battery-voltage.jpg",
            meter("9.34", "V"),
            Taken.at(day + "13:50:26").offset(WINTER)),
        wide(folder + "primer-bulb.jpg", primerBulb(true), day + "14:06:55", WINTER),
        new Shot(folder + "main-fuse.tif", false, fuse(true), Taken.unknown()),
        wide(folder + "drain-plug.jpg", drainPlug(false, 0x7d2f2c), day + "14:31:19", WINTER));
  }

  private static List<Shot> dieselInboard() {
    String folder = "diesel-inboard/photos/";
    String day = "2026:10:29 ";
    return List.of(
        wide(folder + "dipstick.jpg", dipstick(BLACK, 0.81, -8), day + "08:15:22", WINTER),
        wide(folder + "impeller.jpg", impeller(true), day + "09:20:10", WINTER),
        wide(folder + "anode.jpg", pencilAnode(0.45), day + "09:48:31", WINTER),
        wide(folder + "belt.jpg", belt(true), day + "10:05:59", WINTER),
        wide(
            folder + "expansion-tank.jpg",
            expansionTank(PINK, 0.08, false),
            day + "10:11:14",
            WINTER),
        wide(folder + "exhaust-elbow.jpg", elbow(false), day + "10:26:43", WINTER),
        tall(
            folder + "separator.jpg",
            separator(DIESEL, 0.10, true),
            Taken.at(day + "11:02:37").offset(WINTER)),
        tall(
            folder + "fuel-sample.jpg",
            jar(DIESEL, 0, 0),
            Taken.at(day + "11:09:50").offset(WINTER)),
        tall(
            folder + "battery-voltage.jpg",
            meter("12.74", "V"),
            Taken.at(day + "08:01:05").offset(WINTER)),
        tall(folder + "seacock.jpg", seacock(false), Taken.at(day + "13:40:18").offset(WINTER)),
        // afloat, before she was hauled out two days earlier
        wide(folder + "shaft-gland.jpg", shaftGland(3), "2026:10:27 16:05:46", WINTER),
        tall(
            folder + "extinguisher.jpg",
            extinguisher(0.5),
            Taken.at(day + "14:10:00").offset(WINTER)));
  }

  private static Shot wide(String file, Consumer<Canvas> scene, String at, String offset) {
    return new Shot(file, false, scene, Taken.at(at).offset(offset));
  }

  private static Shot tall(String file, Consumer<Canvas> scene, Taken taken) {
    return new Shot(file, true, scene, taken);
  }
}
