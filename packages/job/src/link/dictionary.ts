/**
 * Words that jobs are made of, the commonest last: deflate refers back to them, which halves a short link. Part of link
 * version 1: it must never change. A better one is a new version.
 */
export const dictionary =
  '"flatOnMorning":"arrived":"chemistries":"sizing":"months":"chance":"budget":"roof_W":"panels":"most":"payload_kg":' +
  '"workshop":{"contact":"about":"Invented "restedVolts":"absorption_V":"cutOff_V":"reserve":"where":"outside""gel""flooded"' +
  '"sky":"clear""mixed""dull""latitude":"longitude":"elev_m":"utcOffset_h":"ghi_kWh_m2_day":"tmax_C":"tmin_C":' +
  '"burns":"gas","element_dc_W":"element_ac_W":"gas_g_day":"controls_A":"thermostat":{"kind":"absorption-fridge",' +
  '"restock_kg_day":"freezerShare":"cutOut_V":"volume_L":"compressor_W":"inside_C":"ratedAt_C":"rated_Wh_day":' +
  '"kind":"compressor-fridge","supply":"ac","only":"driving""camped""above_C":"below_C":"surge_W":"standby_W":"count":' +
  '"everyDays":"duty":"use":[{"at":,"minutes":"use":[{"from":18,"to":22}]},{"id":"name":"kind":"appliance","supply":"dc","watts":' +
  '"runs":[{"kind":"inverter","path":["kind":"solar""kind":"fridge-feed""load":"loads":{"drop":["add":[' +
  '"mainsCharger":{"rated_A":},"inverter":{"rated_W":"surge_W":"idle_W":"peakEfficiency":"on":"always""in-use"' +
  '"feed":{"kind":"converter","rated_A":"count":"efficiency":"minInput_V":"kind":"relay","source":{"volts":"low_V":"lowShare":' +
  '"spare_A":"alternator":{"path":[{"kind":"fuse","rated_A":},{"kind":"cable","length_m":,"area_mm2":"awg":"autoSize_mm":' +
  '"class":"temp_C":},{"kind":"plug","limit_A":,"resistance_mOhm":}]},"solarCharger":{"kind":"mppt","rated_A":"pwm"},' +
  '"arrays":[{"name":"Roof","watts":,"tilt_deg":"azimuth_deg":"mount":"free""flush""soiling":"gamma_per_K":}],' +
  '"bank":{"chemistry":"lfp","agm","nominal_V":24,"capacity_Ah":200,"condition":},"price":,"mass_kg":},{"id":"name":' +
  '"shade":[{"from":,"to":,"lost":}],"drives":{"everyNights":,"hours":,"departs":},"mains":{"trip":{"arrive":"nights":,' +
  '"startCharge":,"bayOffset_C":"setups":[{"id":"now","name":"loads":[{"id":"place":{"id":"currency":"customer":{"name":"notes":"' +
  '{"format":"stayput-job","version":1,"title":"';
