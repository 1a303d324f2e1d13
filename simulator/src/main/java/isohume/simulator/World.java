// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** Chamber, room and instruments, one second at a time. One thread at a time. */
final class World {
    static final double STEP_SECONDS = 1;

    private final BenchParameters parameters;
    private final Room room;
    private final HeatBalance heat;
    private final VapourBalance vapour;
    private final ChamberController controller;
    private final Mirror mirror;
    private final Thermometer thermometer;
    private final List<Transmitter> transmitters = new ArrayList<>();
    private final Map<String, Map<Quantity, Shown>> shown = new LinkedHashMap<>();
    private final Map<Shown, Double> offsets = new HashMap<>();
    private Climate air;
    private boolean doorOpen;

    World(BenchParameters parameters, long seed) {
        this.parameters = parameters;
        Surroundings surroundings = parameters.surroundings();
        room = new Room(surroundings, parameters.noise(), Chance.of(seed, "room"));
        heat = new HeatBalance(parameters.enclosure(), room.celsius());
        double total = room.pascals();
        double percent = surroundings.humidity();
        air = new Climate(room.celsius(), total, percent / 100 * Air.saturation(room.celsius(), total));
        WallFilm walls =
                new WallFilm(parameters.sorption(), parameters.enclosure().volumeLitres(), total, percent);
        vapour = new VapourBalance(parameters.enclosure(), parameters.streams(), walls, air);
        controller = new ChamberController(parameters, Chance.of(seed, "chamber"), air);
        mirror = new Mirror(parameters, Chance.of(seed, "mirror"), atMirror());
        thermometer = new Thermometer(
                parameters, Chance.of(seed, "thermometer"), air, atMirror().pascals());
        for (TransmitterSpecification one : parameters.transmitters()) {
            transmitters.add(new Transmitter(one, parameters, Chance.of(seed, one.id()), air));
        }
        list();
    }

    private void list() {
        show(
                "chamber",
                Quantity.TEMPERATURE,
                new Shown(controller::sensedCelsius, () -> air.celsius(), controller::temperatureOffset));
        show(
                "chamber",
                Quantity.RELATIVE_HUMIDITY,
                new Shown(controller::sensedPercent, () -> air.relativeHumidity(), controller::humidityOffset));
        show("chamber", Quantity.WATER_LEVEL, exact(() -> vapour.saturator().levelPercent()));
        show("mirror", Quantity.DEPOSIT, exact(() -> mirror.deposit().register()));
        show("mirror", Quantity.DEW_POINT, mirror.dewPoint());
        show("thermometer", Quantity.TEMPERATURE, thermometer.temperature());
        show("thermometer", Quantity.PRESSURE, thermometer.pressure());
        for (int i = 0; i < transmitters.size(); i++) {
            String id = parameters.transmitters().get(i).id();
            show(id, Quantity.RELATIVE_HUMIDITY, transmitters.get(i).relativeHumidity());
            show(id, Quantity.TEMPERATURE, transmitters.get(i).temperature());
        }
    }

    private static Shown exact(DoubleSupplier value) {
        return new Shown(value, value, () -> 0);
    }

    private void show(String instrument, Quantity quantity, Shown what) {
        shown.computeIfAbsent(instrument, id -> new EnumMap<>(Quantity.class)).put(quantity, what);
    }

    void step() {
        room.step();
        ChamberController.Action action = controller.step(
                air,
                heat.wall(),
                heat.coldest(room.celsius()),
                vapour.saturator().celsius());
        heat.step(action.watts(), room.celsius(), doorOpen);
        vapour.saturator().step(controller.running() ? heat.air() : room.celsius());
        double effort = action.flow() / parameters.streams().changeFlow();
        double total = room.pascals() + effort * parameters.surroundings().overpressure();
        vapour.step(
                new VapourBalance.Surround(heat.air(), heat.coldest(room.celsius()), total, room.ratio(), doorOpen),
                action.flow(),
                action.wetShare());
        air = new Climate(heat.air(), total, vapour.vapourPascals(total));
        mirror.step(atMirror());
        thermometer.step(air, atMirror().pascals());
        for (Transmitter one : transmitters) {
            one.step(air, room.celsius());
        }
    }

    private Climate atMirror() {
        return air.at(air.pascals() - parameters.surroundings().mirrorDrop());
    }

    /** @throws IllegalArgumentException for an instrument or a quantity that is not on the bench */
    Shown shown(String instrument, Quantity quantity) {
        Map<Quantity, Shown> channels = shown.get(instrument);
        if (channels == null) {
            throw new IllegalArgumentException(
                    "no instrument on this bench is called " + instrument + "; there are " + shown.keySet());
        }
        Shown channel = channels.get(quantity);
        if (channel == null) {
            throw new IllegalArgumentException(
                    instrument + " does not show " + quantity.key() + "; it shows " + channels.keySet());
        }
        return channel;
    }

    /** What its register holds: what it shows, and what was put on top of that. */
    DoubleSupplier register(String instrument, Quantity quantity) {
        Shown what = shown(instrument, quantity);
        return () -> what.shown().getAsDouble() + offsets.getOrDefault(what, 0.0);
    }

    void offset(String instrument, Quantity quantity, double by) {
        offsets.put(shown(instrument, quantity), by);
    }

    void door(boolean open) {
        doorOpen = open;
    }

    boolean doorOpen() {
        return doorOpen;
    }

    Climate air() {
        return air;
    }

    Room room() {
        return room;
    }

    HeatBalance heat() {
        return heat;
    }

    VapourBalance vapour() {
        return vapour;
    }

    ChamberController controller() {
        return controller;
    }

    Mirror mirror() {
        return mirror;
    }

    Thermometer thermometer() {
        return thermometer;
    }

    List<String> transmitterIds() {
        return parameters.transmitters().stream()
                .map(TransmitterSpecification::id)
                .toList();
    }

    List<Transmitter> transmitters() {
        return List.copyOf(transmitters);
    }
}
