package org.seafettle.html;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns records into maps, lists and strings, so that a template sees the view model and nothing
 * else: no method, no class.
 */
final class PlainModel {

  private PlainModel() {}

  static Map<String, Object> of(Record told) {
    var map = new LinkedHashMap<String, Object>();
    for (var component : told.getClass().getRecordComponents()) {
      var value = value(component, told);
      if (!(value instanceof Optional<?> absent && absent.isEmpty())) {
        map.put(component.getName(), plain(value));
      }
    }
    return map;
  }

  private static Object value(RecordComponent component, Record told) {
    try {
      return component.getAccessor().invoke(told);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the view model is public", e);
    }
  }

  private static Object plain(Object value) {
    if (value instanceof Record nested) {
      return of(nested);
    } else if (value instanceof Optional<?> present) {
      return plain(present.orElseThrow());
    } else if (value instanceof List<?> list) {
      return list.stream().map(PlainModel::plain).toList();
    } else if (value instanceof String || value instanceof Boolean || value instanceof Map) {
      return value;
    }
    throw new IllegalStateException("no view model has a " + value.getClass());
  }
}
